using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Runout;

/// <summary>How well the first wave of a profile is known.</summary>
/// <param name="SizeU95">Expanded uncertainty (k = 2) of the eccentricity.</param>
/// <param name="TowardU95Degrees">Expanded uncertainty (k = 2) of its direction in degrees, at most 180.</param>
internal readonly record struct EccentricityDoubt(Length SizeU95, double TowardU95Degrees)
{
    /// <summary>Propagates the covariance of the first wave along its direction and square to it (JCGM 100:2008, 5.2.2).</summary>
    /// <remarks>
    /// The eccentricity is half the movement of its wave, so what the gauge adds to a runout of that size adds half as much to
    /// it. Square to it the gauge can add as much again: the direction's doubt is that over the eccentricity.
    /// </remarks>
    /// <param name="fit">The fit.</param>
    /// <param name="widening">What the readings that were left out widen the fit's doubt by.</param>
    /// <param name="rhythm">Standard uncertainty of the first wave for a hand in step with the turn, in millimetres.</param>
    /// <param name="zero">Standard uncertainty of zero degrees, in turns.</param>
    /// <param name="resolution">The gauge's step, in millimetres.</param>
    /// <param name="gauge">What is known of the gauge.</param>
    public static EccentricityDoubt Of(ProfileFit fit, double widening, double rhythm, double zero, double resolution, GaugeTraits gauge)
    {
        var (a, b) = (fit.Series[1], fit.Series[2]);
        var size = Math.Sqrt(a * a + b * b);
        if (size == 0)
        {
            return new(Half(Budget(0, 1, 0, 0)), 180);
        }

        var along = Budget(2 * size, a / size, b / size, rhythm);
        var aside = Budget(0, -b / size, a / size, 0);
        var turned = Math.Sqrt(Math.Pow(Half(aside).Millimetres / size / (2 * Math.PI), 2) + Math.Pow(2 * zero, 2));
        return new(Half(along), Math.Min(180, 360 * turned));

        static Length Half(RunoutBudget budget) => Length.FromMillimetres(budget.Expanded.Millimetres / 2);

        RunoutBudget Budget(double tir, double cosine, double sine, double beside)
        {
            var noise = widening * Spread(fit.Covariance, cosine, sine);
            return RunoutBudget.For(
                tir, 2 * Math.Sqrt(noise * noise + beside * beside), 2 * Spread(fit.Rounding, cosine, sine), fit.Sigma, resolution, gauge);
        }

        double Spread(double[] covariance, double cosine, double sine)
        {
            double At(int p, int q) => covariance[p * fit.Series.Length + q];
            return Math.Sqrt(Math.Max(0, cosine * cosine * At(1, 1) + 2 * cosine * sine * At(1, 2) + sine * sine * At(2, 2)));
        }
    }
}
