using MathNet.Numerics;

namespace Handspun.Metrology.Fitting;

/// <summary>What one rounded reading says about the value behind it, where that is expected normal about a prediction.</summary>
/// <param name="Gradient">Slope of the log likelihood in the prediction, in 1/mm.</param>
/// <param name="Curvature">Its curvature, 0 or more, in 1/mm².</param>
/// <param name="LogLikelihood">Logarithm of how likely the reading is.</param>
/// <param name="Square">The expected square of the value's distance from the prediction, in mm².</param>
internal readonly record struct RoundedReading(double Gradient, double Curvature, double LogLikelihood, double Square)
{
    private const double Far = 6;
    private const double Smallest = 1e-9;   // a step, so that a gauge without one has a likelihood too

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
            var log = beyond > Far ? -0.5 * beyond * beyond - Math.Log(beyond * Constants.Sqrt2Pi) : Math.Log(Math.Max(step, Smallest) / noise * Density(off / noise) + double.Epsilon);
            return new(to / (noise * noise), 1 / (noise * noise), log, to * to);
        }

        var (low, high) = ((Math.Abs(off) - step / 2) / noise, (Math.Abs(off) + step / 2) / noise);
        var within = 0.5 * (SpecialFunctions.Erfc(low / Constants.Sqrt2) - SpecialFunctions.Erfc(high / Constants.Sqrt2));
        var (atLow, atHigh) = (Density(low), Density(high));
        var mean = (atLow - atHigh) / within;
        var edges = (low * atLow - high * atHigh) / within;
        return new(Math.Sign(off) * mean / noise, Math.Max(0, mean * mean - edges) / (noise * noise), Math.Log(within), noise * noise * Math.Max(0, 1 + edges));
    }

    private static double Density(double at) => Math.Exp(-0.5 * at * at) / Constants.Sqrt2Pi;
}
