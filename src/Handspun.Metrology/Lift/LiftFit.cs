using Handspun.Metrology.Fitting;
using Handspun.Metrology.Runout;
using Handspun.Metrology.Runout.Rotation;

namespace Handspun.Metrology.Lift;

/// <summary>The lobe as a Fourier series in the cam's angle, found together with the angle itself.</summary>
internal sealed class LiftFit
{
    private const double KnotSeconds = 0.1;   // a hand with a machine behind it does not change its speed faster
    private const double ReadingsPerKnot = 1.6;
    private const double ReadingsPerWave = 3;
    private const double SeriesEnds = 2e-4;   // of the lift: what a series of so many waves leaves of a corner
    private const double CornerReach = 5;   // readings at a corner that the waves round off are to lose weight sooner
    private const int FewestWaves = 6;
    private const int MostWaves = 32;
    private const double StiffBend = 0.001;   // turns
    private static readonly double[] OtherBends = [0.003, 0.0003, 0.01];

    private LiftFit(JointFit fit, double[] covariance) =>
        (Turns, Series, Covariance, Harmonics, Weights, Sigma) = (fit.Turns(), fit.Series.ToArray(), covariance, fit.Harmonics, fit.Weights, fit.Sigma);

    /// <summary>The cam's angle at each reading of the trace, in turns.</summary>
    public double[] Turns { get; }

    /// <summary>Mean, then cosine and sine of each wave; millimetres.</summary>
    public double[] Series { get; }

    /// <summary>Covariance of <see cref="Series"/>, the angle's own doubt included; full square.</summary>
    public double[] Covariance { get; }

    /// <summary>Waves in the series.</summary>
    public int Harmonics { get; }

    /// <summary>Robust weight of each reading, 0 to 1.</summary>
    public double[] Weights { get; }

    /// <summary>Standard deviation of the residuals, in millimetres.</summary>
    public double Sigma { get; }

    /// <summary>Turns of the cam from the first reading to the last.</summary>
    public double TurnsSeen => Math.Abs(Turns[^1] - Turns[0]);

    /// <summary>Size of the last two waves, in millimetres: about what the series would ripple less if it went on.</summary>
    public double Ripple => Math.Sqrt(Series[^4..].Sum(wave => wave * wave));

    /// <summary>How unevenly the hand turned: the spread of the speed over its mean.</summary>
    /// <param name="seconds">Times of the readings.</param>
    public double Unevenness(double[] seconds)
    {
        const int strides = 40;   // a turn or less each
        var stride = Math.Max(1, seconds.Length / strides);
        List<double> speeds = [];
        for (var i = stride; i < seconds.Length; i += stride)
        {
            speeds.Add((Turns[i] - Turns[i - stride]) / Math.Max(1e-6, seconds[i] - seconds[i - stride]));
        }

        var mean = speeds.DefaultIfEmpty(0).Average();
        return mean > 0 ? Math.Sqrt(speeds.Average(speed => (speed - mean) * (speed - mean))) / mean : 1;
    }

    /// <summary>Whether every number came out finite.</summary>
    public bool IsFinite => double.IsFinite(Sigma) && double.IsFinite(TurnsSeen) && Series.All(double.IsFinite) && Covariance.All(double.IsFinite);

    /// <summary>Fits the readings of a trace, with angles told in turns of the cam.</summary>
    public static LiftFit Of(Trace trace, IReadOnlyList<AngleAnchor> anchors)
    {
        var (seconds, length) = (trace.Seconds, trace.Seconds[^1] - trace.Seconds[0]);
        var start = IndexStarts.Even(seconds, anchors)!.Turns;
        var intervals = (int)Math.Clamp(length / KnotSeconds, 4, Math.Max(4, seconds.Length / ReadingsPerKnot));
        AngleAnchor[] within = [.. anchors.Where(anchor => anchor.Seconds >= seconds[0] && anchor.Seconds <= seconds[^1])];
        var grid = new FitGrid(
            seconds, trace.Millimetres, within, new UniformSpline(seconds[0], length / intervals, intervals), Math.Max(0.2 * trace.Resolution, SeriesEnds * trace.Range));
        Dwell.Shares(seconds, start).CopyTo(grid.Shares, 0);
        var room = seconds.Length / Math.Max(1, start[^1] - start[0]) / ReadingsPerWave;
        var waves = (int)Math.Clamp(room, FewestWaves, MostWaves);
        var best = Run(grid, waves, start, StiffBend);
        if (LeftOut.InRows(best.Weights) > LeftOut.Most)
        {
            // Whole passes of the lobe were taken for wild: a fit that went astray. Begun otherwise, it may not.
            foreach (var bend in OtherBends)
            {
                var other = Run(grid, waves, start, bend);
                best = LeftOut.InRows(other.Weights) < LeftOut.InRows(best.Weights) ? other : best;
            }
        }

        return new(best, best.SeriesCovariance());
    }

    private static JointFit Run(FitGrid grid, int waves, double[] start, double bend)
    {
        const double rough = 0.5;
        var fit = new JointFit(grid, waves, 0) { Reach = CornerReach };
        fit.Stiffen(bend);
        fit.StartFrom(start);
        fit.Run(8, rough, hold: true);
        fit.Run(40, rough);
        return fit;
    }

    /// <summary>Height and slope (per turn) of the series at an angle in turns.</summary>
    public (double Height, double Slope) At(double turns)
    {
        var (height, slope, _) = ProfileExtremes.At(Series, Harmonics, 1, turns);
        return (Series[0] + height, slope);
    }

    /// <summary>The covariance of two heights of the series, at angles in turns; square millimetres.</summary>
    public double CovarianceAt(double one, double other) => Propagation.Covariance(Row(one), Covariance, Row(other));

    private double[] Row(double turns)
    {
        var row = new double[Series.Length];
        row[0] = 1;
        for (var k = 1; k <= Harmonics; k++)
        {
            (row[2 * k], row[2 * k - 1]) = Math.SinCos(2 * Math.PI * k * turns);
        }

        return row;
    }
}
