using MathNet.Numerics;

namespace Handspun.Metrology.Fitting;

/// <summary>What one rounded reading says about the value behind it, where that is expected normal about a prediction.</summary>
/// <param name="Gradient">Slope of the log likelihood in the prediction, in 1/mm.</param>
/// <param name="Curvature">Its curvature, 0 or more, in 1/mm².</param>
/// <param name="Square">The expected square of the value's distance from the prediction, in mm².</param>
internal readonly record struct RoundedReading(double Gradient, double Curvature, double Square)
{
    private const double Far = 6;

    /// <summary>Takes a reading as the step of the gauge within which the value fell.</summary>
    /// <param name="off">Reading minus prediction.</param>
    /// <param name="step">The gauge's step; 0 or more.</param>
    /// <param name="noise">Standard deviation before rounding; above 0.</param>
    public static RoundedReading Of(double off, double step, double noise)
    {
        var beyond = (Math.Abs(off) - step / 2) / noise;
        if (step < 0.3 * noise || beyond > Far)
        {
            // A step far under the noise, or a reading far off: as if it stood at its own middle, or at the nearer edge.
            var to = beyond > Far ? Math.Sign(off) * beyond * noise : off;
            return new(to / (noise * noise), 1 / (noise * noise), to * to);
        }

        var (low, high) = ((Math.Abs(off) - step / 2) / noise, (Math.Abs(off) + step / 2) / noise);
        var within = 0.5 * (SpecialFunctions.Erfc(low / Constants.Sqrt2) - SpecialFunctions.Erfc(high / Constants.Sqrt2));
        var (atLow, atHigh) = (Density(low), Density(high));
        var mean = (atLow - atHigh) / within;
        var edges = (low * atLow - high * atHigh) / within;
        return new(Math.Sign(off) * mean / noise, Math.Max(0, mean * mean - edges) / (noise * noise), noise * noise * Math.Max(0, 1 + edges));
    }

    /// <summary>The logarithm of how likely a reading is.</summary>
    /// <param name="off">Reading minus prediction.</param>
    /// <param name="step">The gauge's step; above 0.</param>
    /// <param name="noise">Standard deviation before rounding; above 0.</param>
    public static double LogLikelihood(double off, double step, double noise)
    {
        var (low, high) = ((Math.Abs(off) - step / 2) / noise, (Math.Abs(off) + step / 2) / noise);
        return low > Far
            ? -0.5 * low * low - Math.Log(low * Constants.Sqrt2Pi)   // the first term of the tail, within 3 in 100 from there on
            : Math.Log(0.5 * (SpecialFunctions.Erfc(low / Constants.Sqrt2) - SpecialFunctions.Erfc(high / Constants.Sqrt2)));
    }

    private static double Density(double at) => Math.Exp(-0.5 * at * at) / Constants.Sqrt2Pi;
}
