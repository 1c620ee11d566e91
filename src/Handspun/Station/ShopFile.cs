using Handspun.Jobs.Lengths;
using Tomlyn;
using Tomlyn.Model;

namespace Handspun.Station;

/// <summary>The shop's ways, from <c>shop.toml</c>.</summary>
/// <param name="Unit">The unit of lengths on screens, and its last place.</param>
/// <param name="StepAfter">How long after a result the bay goes on to the plan's next point; zero where it never does.</param>
internal sealed record ShopFile(LengthUnit Unit, TimeSpan StepAfter)
{
    /// <summary>The longest time before the bay goes on, in seconds; our own choice.</summary>
    public const long LongestStepSeconds = 600;

    /// <summary>The time that is taken where the shop says none; our own choice.</summary>
    public static readonly TimeSpan UsualStepAfter = TimeSpan.FromSeconds(8);

    /// <summary>A shop that says nothing.</summary>
    public static ShopFile Usual { get; } = new(LengthUnit.Inch, UsualStepAfter);

    /// <summary>The names of those who work here, offered wherever a name is asked; in the order to be offered.</summary>
    public IReadOnlyList<string> Mechanics { get; init; } = [];

    /// <summary>The address at which screens of the shop's network reach the pages, as it is written; null where only this machine does.</summary>
    public string? Screens { get; init; }

    /// <summary>Reads the file; inches where there is none.</summary>
    /// <exception cref="StationTroubleException">The file does not hold.</exception>
    public static ShopFile Read(string path) => File.Exists(path) ? Parse(File.ReadAllText(path), path) : Usual;

    /// <summary>Reads its text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="path">The file, to be named where it does not hold.</param>
    /// <exception cref="StationTroubleException">It does not hold.</exception>
    public static ShopFile Parse(string text, string path)
    {
        try
        {
            var file = TomlSerializer.Deserialize<TomlTable>(text) ?? [];
            if (file.Keys.Any(key => key is not ("unit" or "places" or "step_after_s" or "mechanics" or "screens")))
            {
                throw Wrong(path);
            }

            return new(UnitOf(file) ?? throw Wrong(path), StepTime(file) ?? throw Wrong(path)) { Mechanics = Names(file) ?? throw Wrong(path), Screens = Address(file, path) };
        }
        catch (TomlException)
        {
            throw Wrong(path);
        }
    }

    private static LengthUnit? UnitOf(TomlTable file) => (Value(file, "unit"), Value(file, "places")) switch
    {
        (null, null) => LengthUnit.Inch,
        (null, long places) => LengthUnits.Find("in", places),
        (string symbol, null) => LengthUnits.Find(symbol),
        (string symbol, long places) => LengthUnits.Find(symbol, places),
        _ => null,
    };

    private static TimeSpan? StepTime(TomlTable file) => Value(file, "step_after_s") switch
    {
        null => UsualStepAfter,
        long seconds and >= 0 and <= LongestStepSeconds => TimeSpan.FromSeconds(seconds),
        _ => null,
    };

    private static IReadOnlyList<string>? Names(TomlTable file) => Value(file, "mechanics") switch
    {
        null => [],
        TomlArray names when names.All(name => name is string text && !string.IsNullOrWhiteSpace(text)) => [.. names.Cast<string>()],
        _ => null,
    };

    private static string? Address(TomlTable file, string path) => Value(file, "screens") switch
    {
        null => null,
        string address => address,
        _ => throw Wrong(path),
    };

    private static object? Value(TomlTable file, string key) => file.TryGetValue(key, out var value) ? value : null;

    private static StationTroubleException Wrong(string path) => new(
        $"{path} does not hold: it has up to five lines, unit = \"in\" or unit = \"mm\", places = how many decimals are shown (4 or 3 of an inch, 3 or 2 of a millimetre), step_after_s = a whole number of seconds up to {LongestStepSeconds} (0: the bay waits for you), mechanics = [\"a name\", \"another\"], and screens = \"http://ADDRESS:PORT\" with this machine's address in the shop's network.",
        StationTroubleException.Usage);
}
