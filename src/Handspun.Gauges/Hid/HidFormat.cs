using Handspun.Gauges.Decoding;

namespace Handspun.Gauges.Hid;

/// <summary>How a HID gauge tells its values: the profile's <c>[hid]</c> section.</summary>
public abstract record HidFormat
{
    /// <summary>Whether a device sends what the profile looks for.</summary>
    public abstract bool Suits(ReportDescriptor descriptor);

    /// <summary>A codec for one link.</summary>
    /// <param name="reportDescriptor">What the device says of its reports; empty where it is not known.</param>
    /// <param name="text">Makes the codec for text that the gauge types.</param>
    public abstract IGaugeCodec CreateCodec(ReadOnlySpan<byte> reportDescriptor, Func<IGaugeCodec> text);
}

/// <summary>A gauge that acts as a keyboard and types its values; the profile's frame says what the text means.</summary>
public sealed record HidKeyboardFormat : HidFormat
{
    /// <summary>Whether it types a comma before the decimals.</summary>
    public bool DecimalComma { get; init; }

    /// <inheritdoc/>
    public override bool Suits(ReportDescriptor descriptor) => KeyboardReport.TryFind(descriptor, out _);

    /// <inheritdoc/>
    public override IGaugeCodec CreateCodec(ReadOnlySpan<byte> reportDescriptor, Func<IGaugeCodec> text)
    {
        var report = ReportDescriptor.TryParse(reportDescriptor, out var descriptor, out _) && KeyboardReport.TryFind(descriptor, out var found)
            ? found
            : KeyboardReport.Boot;
        return new HidKeyboardCodec(this, report, text());
    }
}
