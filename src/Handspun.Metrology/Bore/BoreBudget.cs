using Handspun.Metrology.Runout;

namespace Handspun.Metrology.Bore;

/// <summary>The standard uncertainty of a bore, part by part, in millimetres (JCGM 100:2008, 4.3, 5.1.2).</summary>
/// <param name="Fit">From how the passes scatter and the readings within them, rounding included, widened where few passes tell it (Student's t, JCGM 100, G.3).</param>
/// <param name="GaugeError">From the gauge's error limit: a rectangle of twice the limit.</param>
/// <param name="Shown">From reading the gauge at its setting: its step as a rectangle (F.2.2.1), and what a capture there left in doubt.</param>
/// <param name="Size">From the size of the ring or micrometer; no part of a deviation.</param>
public readonly record struct BoreBudget(double Fit, double GaugeError, double Shown, double Size)
{
    /// <summary>Expanded uncertainty of the deviation, k = 2, in millimetres.</summary>
    public double DeviationExpanded => 2 * Math.Sqrt(Fit * Fit + GaugeError * GaugeError + Shown * Shown);

    /// <summary>Expanded uncertainty of the size, k = 2, in millimetres.</summary>
    public double SizeExpanded => 2 * Math.Sqrt(Fit * Fit + GaugeError * GaugeError + Shown * Shown + Size * Size);

    /// <summary>The parts for a fit.</summary>
    internal static BoreBudget For(double fit, double step, GaugeTraits gauge, BoreSetting? setting) => new(
        fit,
        gauge.ErrorDoubt,
        setting is null ? 0 : Math.Sqrt(step * step / 12 + Math.Pow(setting.ShownU95.Millimetres / 2, 2)),
        setting is null ? 0 : Math.Abs(setting.SizeU95.Millimetres) / 2);
}
