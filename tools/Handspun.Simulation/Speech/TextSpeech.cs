using System.Globalization;
using System.Text;

namespace Handspun.Simulation.Speech;

/// <summary>Gauges that send text.</summary>
internal static class TextSpeech
{
    public static byte[] Line(Shown shown) => Bytes($"{IndicatorLine.Of(shown.Millimetres, shown.Inch)}\r\n");

    public static byte[] Exponent(Shown shown) => Bytes($"{Number(shown.InUnit, "+0.0000E+00;-0.0000E+00")}\n");

    /// <summary>Channel, sign, eight letters of number, unit, state, CR.</summary>
    public static byte[] Columns(Shown shown) => Bytes(
        $"01{(shown.InUnit < 0 ? '-' : '+')}{Number(Math.Abs(shown.InUnit), shown.Inch ? "00.00000" : "0000.000")}{(shown.Inch ? 'I' : 'M')}{(shown.BatteryLow ? 'B' : ' ')}\r");

    public static byte[] Labelled(Shown shown) => Bytes(
        $"ch=1;v={Number(shown.InUnit, shown.Inch ? "0.00000" : "0.000")};u={(shown.Inch ? "in" : "mm")};s={(shown.Index ? "I" : shown.BatteryLow ? "B" : "")}\r\n");

    /// <summary>Nine hexadecimal digits: sign, six digits with the last first, point, unit; CR.</summary>
    public static byte[] HexNibbles(Shown shown)
    {
        var counts = shown.Counts(0.001, 0.00005) * (shown.Inch ? 5 : 1);   // in inches five digits stand behind the point
        var digits = Math.Abs(counts).ToString("000000", CultureInfo.InvariantCulture);
        return Bytes($"{(counts < 0 ? 'F' : '0')}{string.Concat(digits.Reverse())}{(shown.Inch ? 5 : 3)}{(shown.Inch ? 1 : 0)}\r");
    }

    private static string Number(double value, string format) => (value + 0.0).ToString(format, CultureInfo.InvariantCulture);

    private static byte[] Bytes(FormattableString text) => Encoding.ASCII.GetBytes(text.ToString(CultureInfo.InvariantCulture));
}
