using Handspun.Metrology.Runout;
using Handspun.Metrology.Runout.Faults;

namespace Handspun.Jobs.Records;

/// <summary>The words for angle references in data.</summary>
public static class RunoutCodes
{
    /// <summary><c>first-reading</c>, <c>mark</c>, <c>index</c> or <c>encoder</c>.</summary>
    public static string Of(AngleReference reference) => reference switch
    {
        AngleReference.Encoder => "encoder",
        AngleReference.Index => "index",
        AngleReference.Mark => "mark",
        _ => "first-reading",
    };

    /// <summary><c>raised</c>, <c>scratch</c> or <c>recess</c>.</summary>
    public static string Of(LocalFaultKind kind) => kind switch
    {
        LocalFaultKind.Raised => "raised",
        LocalFaultKind.Scratch => "scratch",
        LocalFaultKind.Recess => "recess",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such kind of fault."),
    };

    /// <summary>The reference of a code; the first reading where the code is unknown or null.</summary>
    public static AngleReference Read(string? code) => Enum.GetValues<AngleReference>().FirstOrDefault(reference => Of(reference) == code);

    /// <summary>The same for a person, such as <c>the mark</c>.</summary>
    public static string InWords(string? code) => code switch
    {
        "encoder" => "the encoder's zero",
        "index" => "the index",
        "mark" => "the mark",
        _ => "the first reading",
    };
}
