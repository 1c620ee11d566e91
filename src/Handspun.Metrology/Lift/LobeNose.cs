using Handspun.Metrology.Fitting;
using Handspun.Metrology.Runout;

namespace Handspun.Metrology.Lift;

/// <summary>The top of the lobe above its base circle.</summary>
/// <param name="Turns">Where it is highest, in turns of the cam.</param>
/// <param name="Lift">Height above the base circle, in millimetres.</param>
/// <param name="Doubt">Standard uncertainty of the height, from the scatter.</param>
/// <param name="Scatter">Scatter of the readings there, in millimetres.</param>
internal readonly record struct LobeNose(double Turns, double Lift, double Doubt, double Scatter)
{
    private const double HalfWidth = 4.0 / 360;   // a wave of the ripple is three times as long
    private const double Widest = 16.0 / 360;
    private const int FewestReadings = 10;
    private const double MostNoise = 6;
    private const double Widening = 1.35;   // what robust weights and rounding cost beside (found by simulation)
    private const double ShareLeft = 0.5;   // of the ripple, by the parabola over the narrowest stretch (found by simulation)

    /// <summary>The series' own top, put right by what the readings near it leave over: a series that ends early ripples.</summary>
    public static LobeNose Find(LiftFit fit, Trace trace, BaseCircle circle, double highest)
    {
        var nose = Near(fit, trace, circle, highest);

        // Highest minus lowest reading knows the lift without any angle, to the base circle's runout: a fit that is further off went astray.
        var astray = Math.Max(0, Math.Abs(nose.Lift - trace.Range) - circle.Runout - MostNoise * trace.Noise);
        return nose with { Doubt = Math.Sqrt(nose.Doubt * nose.Doubt + astray * astray) * LeftOut.Widening(fit.Weights) };
    }

    private static LobeNose Near(LiftFit fit, Trace trace, BaseCircle circle, double highest)
    {
        var (level, variance) = circle.At(highest);
        var lift = fit.At(highest).Height - level;
        for (var width = HalfWidth; width <= Widest; width *= 1.25)
        {
            List<double> course = [], rests = [];
            for (var i = 0; i < fit.Turns.Length; i++)
            {
                var from = fit.Turns[i] - highest;
                from -= Math.Round(from);
                if (Math.Abs(from) < width)
                {
                    course.Add(from / width);
                    rests.Add(trace.Millimetres[i] - fit.At(fit.Turns[i]).Height);
                }
            }

            if (course.Count >= FewestReadings)
            {
                double[] values = [.. rests];
                var rest = new KnownAngleFit(new double[values.Length], values, [.. course], 0, 2, Math.Max(0.3 * trace.Resolution, 1e-6));
                var scatter = RoundedAlike.Widening(values, rest.Sigma, trace.Resolution) * VarianceAtTop(rest.Covariance());
                var left = Math.Min(fit.Harmonics / 3.0, ShareLeft * Math.Pow(width / HalfWidth, 2)) * fit.Ripple;
                return new(highest, lift + AtTop(rest.Series), Widening * Math.Sqrt(variance + scatter + left * left), rest.Sigma);
            }
        }

        return new(highest, lift, Math.Sqrt(fit.CovarianceAt(highest, highest) + variance + fit.Ripple * fit.Ripple), fit.Sigma);
    }

    // The parabola is written mean + slope x + bend (3x² − 1)/2, and the top is at x = 0.
    private static double AtTop(double[] series) => series[0] - series[2] / 2;

    private static double VarianceAtTop(double[] covariance) =>
        Math.Max(0, covariance[0] - (covariance[2] + covariance[6]) / 2 + covariance[8] / 4);
}
