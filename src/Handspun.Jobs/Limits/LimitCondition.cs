using System.Text.Json.Serialization;

namespace Handspun.Jobs.Limits;

/// <summary>What turns the cams.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<CamDrive>))]
public enum CamDrive
{
    /// <summary>A chain.</summary>
    Chain,

    /// <summary>Gears.</summary>
    Gear,
}

/// <summary>Which parts a limit is for: manuals often give one for new parts and a wider one for parts in service.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<LimitAge>))]
public enum LimitAge
{
    /// <summary>New parts.</summary>
    New,

    /// <summary>Parts in service.</summary>
    Service,
}

/// <summary>The conditions of a limit as they are written in data and said to people.</summary>
/// <param name="Drive">Which drive it is for; null for both.</param>
/// <param name="Age">Which parts it is for; null where nobody said.</param>
/// <param name="Problem">What is wrong with what was written, in one sentence; null where nothing is.</param>
public readonly record struct LimitCondition(CamDrive? Drive, LimitAge? Age, string? Problem)
{
    /// <summary>Reads the codes <c>chain</c> or <c>gear</c>, and <c>new</c> or <c>service</c>; nothing stands for null.</summary>
    public static LimitCondition Read(string? drive, string? age)
    {
        var (known, knownAge) = (DriveOf(drive), AgeOf(age));
        return !string.IsNullOrEmpty(drive) && known is null ? new(null, null, $"drive '{drive}' is not known: write \"chain\" or \"gear\", or leave it out.")
            : !string.IsNullOrEmpty(age) && knownAge is null ? new(null, null, $"age '{age}' is not known: write \"new\" or \"service\", or leave it out.")
            : new(known, knownAge, null);
    }

    /// <summary><c>chain</c> or <c>gear</c>; null for null.</summary>
    public static string? Of(CamDrive? drive) => drive switch { CamDrive.Chain => "chain", CamDrive.Gear => "gear", _ => null };

    /// <summary><c>new</c> or <c>service</c>; null for null.</summary>
    public static string? Of(LimitAge? age) => age switch { LimitAge.New => "new", LimitAge.Service => "service", _ => null };

    /// <summary>Such as <c>service limit, chain drive</c>; null where nobody said.</summary>
    public static string? InWords(Limit limit)
    {
        string?[] words =
        [
            limit.Age switch { LimitAge.New => "limit for new parts", LimitAge.Service => "service limit", _ => null },
            limit.Drive switch { CamDrive.Chain => "chain drive", CamDrive.Gear => "gear drive", _ => null },
        ];
        return words.OfType<string>().ToList() is { Count: > 0 } said ? string.Join(", ", said) : null;
    }

    private static CamDrive? DriveOf(string? code) => code switch { "chain" => CamDrive.Chain, "gear" => CamDrive.Gear, _ => null };

    private static LimitAge? AgeOf(string? code) => code switch { "new" => LimitAge.New, "service" => LimitAge.Service, _ => null };
}
