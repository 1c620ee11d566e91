namespace Handspun.Gauges.Hid;

/// <summary>How a HID gauge tells its values: the profile's <c>[hid]</c> section.</summary>
public abstract record HidFormat
{
    /// <summary>Whether a device sends what the profile looks for.</summary>
    public abstract bool Suits(ReportDescriptor descriptor);
}

/// <summary>A gauge that acts as a keyboard and types its values; the profile's frame says what the text means.</summary>
public sealed record HidKeyboardFormat : HidFormat
{
    /// <summary>Whether it types a comma before the decimals.</summary>
    public bool DecimalComma { get; init; }

    /// <inheritdoc/>
    public override bool Suits(ReportDescriptor descriptor) => KeyboardReport.TryFind(descriptor, out _);
}
