using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;

namespace Handspun.Metrology.EndPlay;

/// <summary>The standard uncertainty of an end play, part by part, in millimetres (JCGM 100:2008, 4.3, 5.1.2).</summary>
/// <param name="Fit">From how far the stops scatter from hold to hold and the readings within a hold (type A), widened where few holds tell it (Student's t, JCGM 100, G.3).</param>
/// <param name="Resolution">What the gauge's step adds beyond that, as far as noise, pressure and drift do not even it out.</param>
/// <param name="GaugeError">From the gauge's error limit: a rectangle of twice the limit.</param>
/// <param name="Alignment">From the plunger's lean off the shaft's axis: the reading is the travel times the cosine, a rectangle from none to all of it.</param>
public readonly record struct EndPlayBudget(double Fit, double Resolution, double GaugeError, double Alignment)
{
    /// <summary>All parts together, expanded with k = 2.</summary>
    public Length Expanded =>
        Length.FromMillimetres(2 * Math.Sqrt(Fit * Fit + Resolution * Resolution + GaugeError * GaugeError + Alignment * Alignment));

    /// <summary>The parts for an end play.</summary>
    internal static EndPlayBudget For(double endPlay, double fit, double resolution, GaugeTraits gauge) =>
        new(fit, resolution, gauge.ErrorDoubt, gauge.LeanDoubt(endPlay));
}
