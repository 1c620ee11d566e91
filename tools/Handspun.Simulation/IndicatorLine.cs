using System.Globalization;

namespace Handspun.Simulation;

/// <summary>What a simulated indicator sends: a line of text with sign, number and unit.</summary>
public static class IndicatorLine
{
    private const double MillimetresPerInch = 25.4;

    /// <summary>The line for a value in millimetres, without its end.</summary>
    /// <param name="millimetres">What the display shows.</param>
    /// <param name="inch">Whether the indicator is set to inches.</param>
    public static string Of(double millimetres, bool inch)
    {
        var shown = (inch ? millimetres / MillimetresPerInch : millimetres) + 0.0;   // a minus zero would print two signs
        return shown.ToString(inch ? "+0.00000;-0.00000;+0.00000" : "+0.000;-0.000;+0.000", CultureInfo.InvariantCulture) + (inch ? " in" : " mm");
    }
}
