using Handspun.Metrology.Fitting;
using Handspun.Metrology.Runout;

namespace Handspun.Metrology.Lift;

/// <summary>The top of the lobe above its base circle.</summary>
/// <param name="Turns">Where it is highest, in turns of the cam.</param>
/// <param name="Lift">Height above the base circle, in millimetres.</param>
/// <param name="Doubt">Standard uncertainty of the height, from the scatter and the rounding of the readings.</param>
internal readonly record struct LobeNose(double Turns, double Lift, double Doubt)
{
    private const double HalfWidth = 4.0 / 360;   // a wave of the ripple is three times as long
    private const double Widest = 16.0 / 360;
    private const int FewestReadings = 10;
    private const double MostNoise = 6;
    private const double LeastNoise = 0.0002;
    private const double OfTheStep = 0.3;   // that the series may be off by, for the gauge rounds alike all that rests at the top
    private const double Widening = 1.6;   // what robust weights and the angle's own fit cost beside (found by simulation)
    private static readonly double[] Top = [1, 0, -0.5];   // of the parabola, at its middle
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
        var most = Math.Max(OfTheStep * trace.Resolution, fit.Sigma);
        for (var width = HalfWidth; width <= Widest; width *= 1.25)
        {
            List<double> course = [], rests = [];
            for (var i = 0; i < fit.Turns.Length; i++)
            {
                var from = fit.Turns[i] - highest;
                from -= Math.Round(from);
                if (Math.Abs(from) < width && fit.Weights[i] > 0)
                {
                    course.Add(from / width);
                    rests.Add(trace.Millimetres[i] - fit.At(fit.Turns[i]).Height);
                }
            }

            if (course.Count >= FewestReadings)
            {
                var (series, covariance) = RoundedFit.Of(
                    [.. course.Select(Row)], [.. rests], trace.Resolution, [.. Enumerable.Repeat(most, 3)], Math.Max(Spread(rests), LeastNoise), LeastNoise);
                var scatter = Propagation.Covariance(Top, covariance, Top);
                var left = Math.Min(fit.Harmonics / 3.0, ShareLeft * Math.Pow(width / HalfWidth, 2)) * fit.Ripple;
                return new(highest, lift + Top.Zip(series, (top, value) => top * value).Sum(), Widening * Math.Sqrt(variance + Math.Max(0, scatter) + left * left));
            }
        }

        return new(highest, lift, Math.Sqrt(fit.CovarianceAt(highest, highest) + variance + fit.Ripple * fit.Ripple));
    }

    // Mean + slope x + bend (3x² − 1)/2.
    private static double[] Row(double x) => [1, x, (3 * x * x - 1) / 2];

    private static double Spread(List<double> rests) => Math.Sqrt(rests.Sum(rest => rest * rest) / rests.Count);
}
