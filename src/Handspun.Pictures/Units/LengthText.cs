using System.Globalization;
using Handspun.Metrology.Quantities;

namespace Handspun.Pictures.Units;

/// <summary>Lengths as people read them.</summary>
public static class LengthText
{
    /// <summary>The unit's symbol: <c>in</c> or <c>mm</c>.</summary>
    public static string Symbol(DisplayUnit unit) => unit switch
    {
        DisplayUnit.Inch => "in",
        DisplayUnit.Millimetre => "mm",
        _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "No such unit."),
    };

    /// <summary>The number of that unit in so many millimetres.</summary>
    public static double Number(double millimetres, DisplayUnit unit) =>
        unit == DisplayUnit.Inch ? millimetres / Length.MillimetresPerInch : millimetres;

    /// <summary>A length with its unit, to 0.0001 in or 0.001 mm.</summary>
    public static string Of(Length length, DisplayUnit unit) =>
        $"{Digits(Number(length.Millimetres, unit), Decimals(unit))} {Symbol(unit)}";

    /// <summary>An expanded uncertainty with its unit, never shown as zero: what is below the last digit shows as one step of it.</summary>
    public static string OfUncertainty(Length uncertainty, DisplayUnit unit)
    {
        var step = Math.Pow(10, -Decimals(unit));
        return $"{Digits(Math.Max(Number(uncertainty.Millimetres, unit), step), Decimals(unit))} {Symbol(unit)}";
    }

    /// <summary>A number with so many decimals and a true minus sign.</summary>
    internal static string Digits(double value, int decimals)
    {
        var text = Math.Abs(value).ToString($"F{decimals}", CultureInfo.InvariantCulture);
        var isZero = text.AsSpan().IndexOfAnyExcept('0', '.') < 0;
        return value < 0 && !isZero ? $"\u2212{text}" : text;
    }

    private static int Decimals(DisplayUnit unit) => unit == DisplayUnit.Inch ? 4 : 3;
}
