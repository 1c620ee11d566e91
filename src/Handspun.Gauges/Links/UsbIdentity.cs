using System.Globalization;

namespace Handspun.Gauges.Links;

/// <summary>What stays the same when a USB device is plugged in elsewhere: <c>VVVV:PPPP[:SERIAL]</c>.</summary>
/// <param name="Vendor">The vendor's number.</param>
/// <param name="Product">The product's number.</param>
/// <param name="Serial">The serial number, never empty; null stands for any, or for a device that has none.</param>
public readonly record struct UsbIdentity(ushort Vendor, ushort Product, string? Serial = null)
{
    private const int Digits = 4;

    /// <summary>Reads an identity: two numbers of four hexadecimal digits, and what follows a second colon is the serial number.</summary>
    /// <returns>False where the text is not of that form.</returns>
    public static bool TryParse(ReadOnlySpan<char> text, out UsbIdentity identity)
    {
        const int product = Digits + 1;
        const int serial = product + Digits + 1;
        identity = default;
        if (text.Length < serial - 1 || text[Digits] != ':' || !TryParseNumber(text[..Digits], out var vendorNumber) ||
            !TryParseNumber(text[product..(serial - 1)], out var productNumber))
        {
            return false;
        }

        var rest = text[(serial - 1)..];
        if (!rest.IsEmpty && (rest[0] != ':' || rest[1..].IsWhiteSpace()))
        {
            return false;
        }

        identity = new(vendorNumber, productNumber, rest.IsEmpty ? null : rest[1..].ToString());
        return true;
    }

    /// <summary>Whether a device that is there is the one that is meant: a serial number that is not given fits any.</summary>
    public bool Fits(UsbIdentity device) =>
        Vendor == device.Vendor && Product == device.Product && (Serial is null || Serial == device.Serial);

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Vendor:X4}:{Product:X4}{(Serial is null ? "" : ":" + Serial)}");

    private static bool TryParseNumber(ReadOnlySpan<char> digits, out ushort number) =>
        ushort.TryParse(digits, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out number);
}
