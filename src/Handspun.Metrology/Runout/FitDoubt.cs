using Handspun.Metrology.Fitting;

namespace Handspun.Metrology.Runout;

/// <summary>Standard uncertainties that follow from a fit's covariance.</summary>
/// <param name="Runout">Of the runout, in millimetres, the gauge's rounding left out.</param>
/// <param name="Rounding">Of the runout from the gauge's rounding, in millimetres.</param>
/// <param name="HighTurns">Of the high spot, in turns.</param>
internal readonly record struct FitDoubt(double Runout, double Rounding, double HighTurns)
{
    /// <summary>Propagates the covariance (JCGM 100:2008, 5.2.2). At an extreme the slope is nothing, so its own place does not count for the runout.</summary>
    public static FitDoubt Of(ProfileFit fit, ProfileExtremes extremes)
    {
        var movement = new double[fit.Series.Length];
        var slope = new double[fit.Series.Length];
        for (var k = 1; k <= fit.Harmonics; k++)
        {
            var (highSine, highCosine) = Math.SinCos(2 * Math.PI * k * extremes.HighTurns);
            var (lowSine, lowCosine) = Math.SinCos(2 * Math.PI * k * extremes.LowTurns);
            (movement[2 * k - 1], movement[2 * k]) = (highCosine - lowCosine, highSine - lowSine);
            (slope[2 * k - 1], slope[2 * k]) = (-2 * Math.PI * k * highSine, 2 * Math.PI * k * highCosine);
        }

        var bend = ProfileExtremes.At(fit.Series, fit.Harmonics, 1, extremes.HighTurns).Bend;
        double Spread(double[] gradient, double[] covariance) => Math.Sqrt(Math.Max(0, Propagation.Covariance(gradient, covariance, gradient)));
        var (noise, rounding) = (Spread(slope, fit.Covariance), Spread(slope, fit.Rounding));
        var angle = bend == 0 ? 0.5 : Math.Min(0.5, Math.Sqrt(noise * noise + rounding * rounding) / Math.Abs(bend));
        return new(Spread(movement, fit.Covariance), Spread(movement, fit.Rounding), angle);
    }
}
