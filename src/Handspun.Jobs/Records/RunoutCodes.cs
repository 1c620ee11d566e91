using Handspun.Metrology.Runout;

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

    /// <summary>The same for a person, such as <c>the mark</c>.</summary>
    public static string InWords(string? code) => code switch
    {
        "encoder" => "the encoder's zero",
        "index" => "the index",
        "mark" => "the mark",
        _ => "the first reading",
    };
}
