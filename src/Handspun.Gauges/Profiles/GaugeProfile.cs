using Handspun.Gauges.Decoding;
using Handspun.Gauges.Hid;
using Handspun.Gauges.Links;

namespace Handspun.Gauges.Profiles;

/// <summary>How one kind of gauge talks: link, frame, value. Described by what goes over the wire.</summary>
public sealed record GaugeProfile
{
    /// <summary>The profile's name, the same as its file's: lower-case letters, digits and hyphens.</summary>
    public required string Name { get; init; }

    /// <summary>One line that says what goes over the wire.</summary>
    public required string Title { get; init; }

    /// <summary>How the serial line is set.</summary>
    public LinkSettings Link { get; init; } = new();

    /// <summary>How a frame becomes a number.</summary>
    public required FrameFormat Frame { get; init; }

    /// <summary>What the number stands for.</summary>
    public ValueFormat Value { get; init; } = new();

    /// <summary>What the numbers are worth.</summary>
    public GaugeAccuracy Accuracy { get; init; } = new();

    /// <summary>What the gauge has to be told so that it sends.</summary>
    public RequestSettings Request { get; init; } = new();

    /// <summary>How a once-per-turn pulse comes in; null where there is none.</summary>
    public IndexSettings? Index { get; init; }

    /// <summary>The time from one reading to the next by an even clock of the gauge's own; null where it has none, or none is known.</summary>
    public TimeSpan? SendsEvery { get; init; }

    /// <summary>The profile file as it was read; goes into every journal, so that a journal needs no other file to be replayed.</summary>
    public string Text { get; init; } = "";

    /// <summary>How a HID gauge tells its values; null of every other gauge.</summary>
    public HidFormat? Hid => Link.Hid;

    /// <summary>A codec for one link.</summary>
    /// <param name="reportDescriptor">What a HID gauge says of its reports; empty of every other gauge.</param>
    public IGaugeCodec CreateCodec(ReadOnlyMemory<byte> reportDescriptor = default) =>
        Hid?.CreateCodec(reportDescriptor.Span, Frame.CreateCodec) ?? Frame.CreateCodec();
}

/// <summary>What a gauge's maker states of its values; in millimetres, zero where it is not known.</summary>
public sealed record GaugeAccuracy
{
    /// <summary>The smallest step that it shows.</summary>
    public double ResolutionMillimetres { get; init; }

    /// <summary>The largest error of the indication, ± this much.</summary>
    public double ErrorLimitMillimetres { get; init; }
}
