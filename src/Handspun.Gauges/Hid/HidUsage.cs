using System.Globalization;

namespace Handspun.Gauges.Hid;

/// <summary>What a field of a HID report stands for: a number within a page of the HID Usage Tables, such as 0001:0030 for an X axis.</summary>
/// <param name="Page">The usage page; 0xFF00 and above are the makers' own.</param>
/// <param name="Id">The number within the page.</param>
public readonly record struct HidUsage(ushort Page, ushort Id)
{
    /// <summary>The page of buttons; their numbers count from 1.</summary>
    public const ushort ButtonPage = 0x09;

    /// <summary>The page of keyboards and keypads.</summary>
    public const ushort KeyboardPage = 0x07;

    internal static HidUsage FromExtended(uint value) => new((ushort)(value >> 16), (ushort)value);

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Page:X4}:{Id:X4}");
}

/// <summary>A run of usages on one page, from the first to the last.</summary>
/// <param name="First">The first.</param>
/// <param name="Last">The last number, on the same page; not below the first.</param>
public readonly record struct HidUsageRange(HidUsage First, ushort Last)
{
    /// <summary>How many there are.</summary>
    public int Count => Last - First.Id + 1;

    /// <summary>The usage so many places after the first; <paramref name="place"/> is below <see cref="Count"/>.</summary>
    public HidUsage At(int place) => First with { Id = (ushort)(First.Id + place) };
}
