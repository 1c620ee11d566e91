using System.Globalization;

namespace Handspun.Pictures.Scales;

/// <summary>Numbers as they stand at an axis or in a note.</summary>
internal static class Digits
{
    /// <summary>A number with so many decimals and a true minus sign.</summary>
    public static string Of(double value, int decimals)
    {
        var text = Math.Abs(value).ToString($"F{decimals}", CultureInfo.InvariantCulture);
        var isZero = text.AsSpan().IndexOfAnyExcept('0', '.') < 0;
        return value < 0 && !isZero ? $"\u2212{text}" : text;
    }
}
