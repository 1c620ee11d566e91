using Handspun.Metrology.Fitting;

namespace Handspun.Metrology.Runout.Rotation;

/// <summary>How many waves the profile needs.</summary>
/// <remarks>
/// A wave of the profile and an unevenness of the hand that comes back every turn look alike. A fit that begins with few
/// waves bends the angle to make up for them and stays there; so the search begins with many waves and a stiff angle,
/// and takes waves away.
/// </remarks>
internal static class OrderSearch
{
    private const int Many = 6;
    private const int Most = 10;
    private const double Rough = 0.5;
    private const double Worse = 15;
    private const double StandsOut = 10;   // chi-square with two degrees of freedom: 0.7 % by chance
    private const double StiffBend = 0.003;   // turns
    private const double DriftTurns = 1.5;   // with less, a drift and an off-centre shaft are one and the same

    /// <summary>A fit begun from a guess of the angle, with few waves and few rounds: good enough to tell guesses apart.</summary>
    public static JointFit FromTurns(FitGrid grid, double[] turns, int harmonics)
    {
        var fit = new JointFit(grid, Math.Min(Room(grid, turns), harmonics), turns[^1] - turns[0] < DriftTurns ? 0 : 1);
        fit.StartFrom(turns);
        fit.Run(14, Rough);
        return fit;
    }

    /// <summary>The best order, beginning from a fit of any.</summary>
    public static JointFit Best(FitGrid grid, JointFit start, double stiffBend = StiffBend)
    {
        var turns = start.Turns();
        var room = Room(grid, turns);
        var fit = new JointFit(grid, Math.Min(room, Math.Max(Many, start.Harmonics)), start.DriftOrder);
        fit.Stiffen(stiffBend);
        fit.StartFrom(turns);
        fit.Run(6, Rough, hold: true);
        fit.Run(30, Rough);
        var best = fit;
        for (var harmonics = Needed(fit); harmonics >= 1; harmonics--)
        {
            fit = Next(grid, fit, Math.Min(harmonics, fit.Harmonics - 1));
            best = fit.Criterion < best.Criterion ? fit : best;
            if (fit.Criterion > best.Criterion + Worse || fit.Harmonics == 1)
            {
                break;
            }
        }

        while (best.Harmonics >= Many && best.Harmonics < Math.Min(room, Most))
        {
            fit = Next(grid, best, best.Harmonics + 1);
            if (fit.Criterion >= best.Criterion)
            {
                break;
            }

            best = fit;
        }

        return best;
    }

    // Waves up to the last that stands out of its own doubt.
    private static int Needed(JointFit fit)
    {
        var covariance = fit.SeriesCovariance();
        var size = fit.Series.Length;
        for (var k = fit.Harmonics; k > 1; k--)
        {
            var (a, b) = (2 * k - 1, 2 * k);
            var (aa, ab, bb) = (covariance[a * size + a], covariance[b * size + a], covariance[b * size + b]);
            var (x, y) = (fit.Series[a], fit.Series[b]);
            if ((x * x * bb - 2 * x * y * ab + y * y * aa) / (aa * bb - ab * ab) > StandsOut)
            {
                return k;
            }
        }

        return 1;
    }

    private static JointFit Next(FitGrid grid, JointFit from, int harmonics)
    {
        var next = new JointFit(grid, harmonics, from.DriftOrder);
        next.StartFrom(from);
        next.Run(20, Rough);
        return next;
    }

    // A wave needs two readings and some to spare.
    private static int Room(FitGrid grid, double[] turns) =>
        turns[^1] - turns[0] is var seen && double.IsFinite(seen)
            ? (int)Math.Clamp(grid.Seconds.Length / Math.Max(seen, 1) / 2.5, 1, Most)
            : 1;
}
