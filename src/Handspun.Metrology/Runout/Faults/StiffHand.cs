using Handspun.Metrology.Fitting;
using Handspun.Metrology.Runout.Rotation;

namespace Handspun.Metrology.Runout.Faults;

/// <summary>The same readings under a hand that is taken to be steady.</summary>
/// <remarks>
/// A hand that may jolt can be bent, turn after turn, until it makes up for a recess, and then nothing stands out. A steady
/// hand with few waves fits worse everywhere, but a recess stands out of it. So this fit proposes what may be a fault; only a fit
/// with a free hand that never saw those readings decides.
/// </remarks>
internal static class StiffHand
{
    private const double Bend = 0.006;   // turns; 0.003 and 0.012 found a little less on simulated shafts
    private const int MostWaves = 4;
    private const int Renewals = 4;

    /// <summary>The fit, begun from the angle that a freer one found.</summary>
    public static ProfileFit Fit(Trace trace, ProfileFit free)
    {
        var group = Thinning.Group(trace.Seconds.Length, free.TurnsSeen, AngleSearch.SamplePerTurn);
        var (seconds, millimetres) = Thinning.Means(trace.Seconds, trace.Millimetres, group);
        var grid = AngleSearch.Lay(trace, seconds, millimetres, free.Anchors, free.TurnsSeen);
        var turns = Array.ConvertAll(seconds, at => free.TurnsAt(at));
        Dwell.Shares(seconds, turns).CopyTo(grid.Shares, 0);
        var fit = new JointFit(grid, Math.Min(free.Harmonics, MostWaves), free.DriftOrder);
        fit.Stiffen(Bend);
        fit.StartFrom(turns);
        for (var round = 0; round < Renewals; round++)
        {
            fit.Run(4, hold: true);
            Biweight.Set(fit.Residuals, grid.NoiseFloor, fit.Weights);
        }

        fit.Run(4, hold: true);
        return AngleSearch.Describe(trace, grid, fit, free.Anchors).Fit!;
    }
}
