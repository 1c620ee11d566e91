using System.Globalization;
using System.Text.RegularExpressions;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Lengths;

/// <summary>Lengths as people write them.</summary>
public static partial class LengthText
{
    /// <summary>What to say to a length without a unit or without a number.</summary>
    public const string HowToWrite = "Give the length with its unit, such as '0.005 in' or '0.127 mm'.";

    /// <summary>Reads a length with its unit: <c>0.005 in</c>, <c>0,127 mm</c>, <c>.005"</c>.</summary>
    /// <returns>False where the number or the unit is missing.</returns>
    public static bool TryParse(string? text, out Length length)
    {
        length = default;
        return Shape().Match(text ?? "") is { Success: true } match
            && !match.Groups["sign"].Success
            && TryRead(match, null, out length);
    }

    /// <summary>Reads a length that may stand without its unit, and below zero as a needle may: <c>21,397</c>, <c>−0.002 in</c>.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="unit">The unit of a number that has none of its own; null where every number needs one.</param>
    /// <param name="length">The length.</param>
    /// <returns>False where the number is missing, or the unit is and none was chosen.</returns>
    public static bool TryParse(string? text, LengthUnit? unit, out Length length)
    {
        length = default;
        return Shape().Match(text ?? "") is { Success: true } match && TryRead(match, unit, out length);
    }

    private static bool TryRead(Match match, LengthUnit? unit, out Length length)
    {
        length = default;
        var typed = match.Groups["unit"] switch
        {
            { Success: false } => unit,
            { Value: var word } => word.Equals("mm", StringComparison.OrdinalIgnoreCase) ? LengthUnit.Millimetre : LengthUnit.Inch,
        };
        if (typed is null || !double.TryParse(match.Groups["number"].Value.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number))
        {
            return false;
        }

        var signed = match.Groups["sign"].Value is "-" or "\u2212" ? -number : number;
        length = typed == LengthUnit.Millimetre ? Length.FromMillimetres(signed) : Length.FromInches(signed);
        return true;
    }

    /// <summary>Reads a length with its unit that may be below zero and may be given in micrometres: <c>-0.0002 mm</c>, <c>+0.15 µm</c>.</summary>
    /// <returns>False where the number or the unit is missing.</returns>
    public static bool TryParseSigned(string? text, out Length length)
    {
        var match = Signed().Match(text ?? "");
        var micrometres = match.Groups["micro"].Success;
        if (!match.Success || !TryParse(match.Groups["size"].Value + (micrometres ? "mm" : match.Groups["unit"].Value), out var size))
        {
            length = default;
            return false;
        }

        length = Length.FromMillimetres((match.Groups["minus"].Success ? -1 : 1) * size.Millimetres / (micrometres ? 1000 : 1));
        return true;
    }

    /// <summary>Writes a length finely enough for a gauge block: five decimals of an inch, or four of a millimetre, with the unit.</summary>
    /// <param name="length">The length.</param>
    /// <param name="unit">Its unit.</param>
    /// <param name="withPlus">Whether a plus stands before what is above zero.</param>
    public static string Fine(Length length, LengthUnit unit, bool withPlus = false)
    {
        var number = Rounded(length, unit.Fine, more: 1);
        return $"{(withPlus && number > 0 ? "+" : "")}{Written(number, unit.Fine, more: 1)} {Symbol(unit)}";
    }

    /// <summary>Writes an uncertainty as finely, rounded up.</summary>
    public static string FineUncertainty(Length length, LengthUnit unit) => $"{Written(RoundedUp(length, unit.Fine, more: 1), unit.Fine, more: 1)} {Symbol(unit)}";

    /// <summary>Writes a limit: with the places of the unit, or more where it would be another limit without them.</summary>
    public static string Bound(Length length, LengthUnit unit)
    {
        var fine = Number(length, unit.Fine);
        var spare = unit.Fine.Places - unit.Places;
        return $"{(spare > 0 && fine.EndsWith(new string('0', spare), StringComparison.Ordinal) ? fine[..^spare] : fine)} {Symbol(unit)}";
    }

    /// <summary>Writes a length with the places of the unit and its symbol: four or three decimals of an inch, three or two of a millimetre.</summary>
    public static string Of(Length length, LengthUnit unit) => $"{Number(length, unit)} {Symbol(unit)}";

    /// <summary>Writes a length so that what was typed comes back as it was: to a millionth of an inch, or a hundred-thousandth of a millimetre.</summary>
    public static string AsTyped(Length length, LengthUnit unit) =>
        $"{InUnit(length.Millimetres, unit).ToString(unit.IsInch ? "0.00####" : "0.0####", CultureInfo.InvariantCulture)} {Symbol(unit)}";

    /// <summary>The same of a length in millimetres that may not be there; empty then.</summary>
    public static string AsTyped(double? millimetres, LengthUnit unit) => millimetres is { } length ? AsTyped(Length.FromMillimetres(length), unit) : "";

    /// <summary>Writes a length without its unit.</summary>
    public static string Number(Length length, LengthUnit unit) => Written(Rounded(length, unit), unit);

    /// <summary>How many of the unit go into so many millimetres; for axes, where only ratios matter.</summary>
    public static double InUnit(double millimetres, LengthUnit unit) => unit.IsInch ? millimetres / Length.MillimetresPerInch : millimetres;

    /// <summary>Writes an uncertainty with its unit.</summary>
    public static string Uncertainty(Length length, LengthUnit unit) => $"{UncertaintyNumber(length, unit)} {Symbol(unit)}";

    /// <summary>Writes an uncertainty without its unit, rounded up so that it never looks smaller than it is.</summary>
    public static string UncertaintyNumber(Length length, LengthUnit unit) => Written(RoundedUp(length, unit), unit);

    /// <summary>Writes a value with its expanded uncertainty.</summary>
    public static string WithUncertainty(Length value, Length uncertainty, LengthUnit unit) =>
        $"{Of(value, unit)} ± {Uncertainty(uncertainty, unit)}";

    /// <summary>The unit's symbol.</summary>
    public static string Symbol(LengthUnit unit) => unit.IsInch ? "in" : "mm";

    private static double Rounded(Length length, LengthUnit unit, int more = 0) => Math.Round(InUnit(length.Millimetres, unit), unit.Places + more) + 0.0;   // no minus zero

    private static double RoundedUp(Length length, LengthUnit unit, int more = 0)
    {
        var step = Math.Pow(10, -unit.Places - more);
        return Math.Max(0, Math.Ceiling(InUnit(length.Millimetres, unit) / step - 1e-6)) * step + 0.0;
    }

    private static string Written(double number, LengthUnit unit, int more = 0) =>
        number.ToString("0." + new string('0', unit.Places + more), CultureInfo.InvariantCulture).Replace('-', '\u2212');

    [GeneratedRegex("""^\s*(?<sign>[+\-\u2212])?\s*(?<number>\d{0,6}[.,]?\d{1,9})\s*(?<unit>mm|in|inch|")?\s*$""", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Shape();

    [GeneratedRegex("""^\s*(?:\+|(?<minus>[-\u2212]))?\s*(?<size>[\d.,]+)\s*(?:(?<micro>[\u00b5\u03bcu]m)|(?<unit>mm|in|inch|"))\s*$""", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Signed();
}
