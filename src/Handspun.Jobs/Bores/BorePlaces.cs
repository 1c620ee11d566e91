using System.Globalization;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Points;

namespace Handspun.Jobs.Bores;

/// <summary>Places in a bore in words.</summary>
public static class BorePlaces
{
    /// <summary>Such as <c>12.000 mm deep, across 12 o'clock</c>; null where the setup names none.</summary>
    public static string? InWords(BoreSetup setup, LengthUnit unit) => setup is { DepthMillimetres: { } depth, ClockHours: { } clock } ? InWords(depth, clock, unit) : null;

    /// <summary>The same of a depth in millimetres and a clock position in hours.</summary>
    public static string InWords(double depthMillimetres, double clockHours, LengthUnit unit) => string.Create(
        CultureInfo.InvariantCulture, $"{Depth(depthMillimetres, unit)} deep, across {clockHours:0.##} o'clock");

    /// <summary>A depth, which a rule tells to a tenth of a millimetre at best.</summary>
    public static string Depth(double millimetres, LengthUnit unit) => string.Create(
        CultureInfo.InvariantCulture,
        $"{(unit.IsInch ? LengthText.InUnit(millimetres, unit).ToString("0.00", CultureInfo.InvariantCulture) : millimetres.ToString("0.0", CultureInfo.InvariantCulture))} {LengthText.Symbol(unit)}");
}
