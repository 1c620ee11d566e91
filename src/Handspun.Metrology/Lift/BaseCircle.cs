using Handspun.Metrology.Fitting;
using Handspun.Metrology.Runout;

namespace Handspun.Metrology.Lift;

/// <summary>The circle on which the tappet rests between two lifts: its level, and how it turns off centre.</summary>
/// <param name="Series">Mean, cosine and sine of one turn, in millimetres; the last two near zero where it runs true.</param>
/// <param name="Covariance">Their covariance, 3 × 3.</param>
/// <param name="Runout">Full movement over the arc on which the tappet rests, in millimetres.</param>
/// <param name="RunoutDoubt">Its standard uncertainty.</param>
internal sealed record BaseCircle(double[] Series, double[] Covariance, double Runout, double RunoutDoubt)
{
    // A lobe with ramps takes up to about half the turn of the cam (common practice, no source); this much of the far side rests.
    private const double HalfArc = 72.0 / 360;
    private const double HalfArcInDoubt = 40.0 / 360;   // where the angle is known to some twenty degrees only, a flank keeps away
    private const double RestsWithin = 0.06;
    private const int FewestReadings = 8;
    private const int MostReadings = 300;
    private const double LeastNoise = 0.0002;
    private const double AnyLevel = 1;

    // An arc says little of how the circle goes on under the lobe; that it does not run out by more than cams do says the rest:
    private const double UsualRunout = 0.015;   // standard deviation of cosine and sine, in millimetres; from memory of cams in their bearings

    /// <summary>From the readings opposite the nose; null where they do not rest.</summary>
    /// <param name="turns">The cam's angle at each reading.</param>
    /// <param name="trace">The readings.</param>
    /// <param name="nose">The angle of the highest point, in turns.</param>
    /// <param name="seldomTold">Whether the angle was told at a few places of the turn only.</param>
    public static BaseCircle? Find(double[] turns, Trace trace, double nose, bool seldomTold)
    {
        var halfArc = seldomTold ? HalfArcInDoubt : HalfArc;
        List<double> at = [], heights = [];
        for (var i = 0; i < turns.Length; i++)
        {
            var from = turns[i] - nose - 0.5;
            if (Math.Abs(from - Math.Round(from)) < halfArc)
            {
                at.Add(turns[i]);
                heights.Add(trace.Millimetres[i]);
            }
        }

        if (at.Count < FewestReadings || heights.Max() - heights.Min() > RestsWithin * trace.Range + 6 * trace.Noise)
        {
            return null;
        }

        double[] values = [.. heights];
        var wave = new KnownAngleFit([.. at], values, [], 1, 0, Math.Max(0.3 * trace.Resolution, 1e-6));
        int[] used = Used(wave.Weights);
        var level = wave.Series[0];
        var (series, covariance) = RoundedFit.Of(
            Array.ConvertAll(used, i => Row(at[i])),
            Array.ConvertAll(used, i => values[i] - level),
            trace.Resolution,
            [AnyLevel, UsualRunout, UsualRunout],
            wave.Sigma,
            LeastNoise);
        series[0] += level;

        const int steps = 144;
        var (high, low) = (nose + 0.5, nose + 0.5);
        for (var i = 0; i <= steps; i++)
        {
            var place = nose + 0.5 + halfArc * (2.0 * i / steps - 1);
            high = Dot(Row(place), series) > Dot(Row(high), series) ? place : high;
            low = Dot(Row(place), series) < Dot(Row(low), series) ? place : low;
        }

        double[] across = [.. Row(high).Zip(Row(low), (top, bottom) => top - bottom)];
        return new(series, covariance, Dot(across, series), Math.Sqrt(Math.Max(0, Variance(across, covariance))));
    }

    /// <summary>Height of the circle at an angle, and the variance of it.</summary>
    public (double Height, double Variance) At(double turns)
    {
        var row = Row(turns);
        return (Dot(row, Series), Math.Max(0, Variance(row, Covariance)));
    }

    // Those that are no knocks; so many at most, evenly over all turns, for a ground circle is not round to less than they tell.
    private static int[] Used(double[] weights)
    {
        int[] sound = [.. Enumerable.Range(0, weights.Length).Where(i => weights[i] > 0)];
        var apart = Math.Max(1, sound.Length / (double)MostReadings);
        return [.. Enumerable.Range(0, (int)(sound.Length / apart)).Select(k => sound[(int)(k * apart)])];
    }

    private static double[] Row(double turns)
    {
        var (sine, cosine) = Math.SinCos(2 * Math.PI * turns);
        return [1, cosine, sine];
    }

    private static double Dot(double[] row, double[] series) => row[0] * series[0] + row[1] * series[1] + row[2] * series[2];

    private static double Variance(double[] row, double[] covariance) => Propagation.Covariance(row, covariance, row);
}
