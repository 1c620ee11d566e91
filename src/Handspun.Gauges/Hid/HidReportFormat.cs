using Handspun.Gauges.Decoding;
using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Hid;

/// <summary>Something that a gauge says of itself, or the index, in a report.</summary>
/// <param name="Number">The button's number where the value is found by its usage, else the bit, from 0 after the report's number.</param>
/// <param name="Flag">What it says; nothing where it is the index.</param>
/// <param name="IsIndex">Whether it goes down as the index passes.</param>
public readonly record struct HidFlag(int Number, GaugeFlags Flag, bool IsIndex);

/// <summary>A gauge that sends its value as a field of a report.</summary>
public sealed record HidReportFormat : HidFormat
{
    /// <summary>What the value is called in the report descriptor; null where it is found by its place.</summary>
    public HidUsage? Usage { get; init; }

    /// <summary>Where the value lies, for a device whose descriptor does not say; null where it is found by its usage.</summary>
    public FieldPlace? Place { get; init; }

    /// <summary>The report in which the usage is looked for, where it is in more than one; 0 for any.</summary>
    public byte ReportId { get; init; }

    /// <summary>Whether the value is taken in counts, for the profile to scale, although it is found by its usage.</summary>
    public bool InCounts { get; init; }

    /// <summary>What else is looked for.</summary>
    public IReadOnlyList<HidFlag> Flags { get; init; } = [];

    /// <summary>Whether its reports tell the index.</summary>
    public bool TellsIndex => Flags.Any(flag => flag.IsIndex);

    /// <inheritdoc/>
    public override bool Suits(ReportDescriptor descriptor) => HidReportLayout.TryFind(this, descriptor, out _);

    /// <inheritdoc/>
    public override IGaugeCodec CreateCodec(ReadOnlySpan<byte> reportDescriptor, Func<IGaugeCodec> text)
    {
        var known = ReportDescriptor.TryParse(reportDescriptor, out var descriptor, out _) && !reportDescriptor.IsEmpty;
        return new HidReportCodec(HidReportLayout.TryFind(this, known ? descriptor : null, out var layout) ? layout : null);
    }
}
