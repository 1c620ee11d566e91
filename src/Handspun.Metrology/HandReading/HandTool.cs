using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.HandReading;

/// <summary>What a length was read from by eye.</summary>
public enum HandToolKind
{
    /// <summary>A set of leaves: the thickest that goes in and the thinnest that does not.</summary>
    FeelerGauge,

    /// <summary>A depth gauge.</summary>
    DepthGauge,

    /// <summary>A micrometer or a calliper over a thickness or a diameter.</summary>
    ThicknessGauge,

    /// <summary>A dial whose needle is watched.</summary>
    Needle,
}

/// <summary>A tool that is read by eye.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Division">Its division: the step to which it is read, or from one leaf to the next. Above zero.</param>
/// <param name="ErrorLimit">Its largest error, ± this much; zero where it is not known.</param>
public sealed record HandTool(HandToolKind Kind, Length Division, Length ErrorLimit)
{
    /// <summary>What cannot be about the tool, and what to do; null where nothing is wrong.</summary>
    public string? Fault =>
        Division <= Length.Zero ? "The tool's division is missing: type the smallest step that it can be read to."
        : ErrorLimit < Length.Zero ? "The tool's error limit is negative: type it as a length of zero or more."
        : null;
}
