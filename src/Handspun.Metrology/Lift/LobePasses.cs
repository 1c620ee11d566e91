using Handspun.Metrology.Fitting;
using Handspun.Metrology.Runout.Rotation;

namespace Handspun.Metrology.Lift;

/// <summary>How often a lobe comes by, and so which shaft the angle was told of.</summary>
internal static class LobePasses
{
    private const double Low = 0.3;
    private const double High = 0.6;

    /// <summary>Where the lobe passed, in turns of the shaft that the angle is told of; a pass that the capture cuts off is not there.</summary>
    /// <param name="seconds">Times of the readings.</param>
    /// <param name="millimetres">The readings, wild ones left out.</param>
    /// <param name="told">The angles.</param>
    public static List<double> Turns(double[] seconds, double[] millimetres, IReadOnlyList<AngleAnchor> told)
    {
        var turns = IndexStarts.Even(seconds, told)!.Turns;
        var (least, most) = (millimetres.Min(), millimetres.Max());
        var (low, high) = (least + Low * (most - least), least + High * (most - least));
        List<double> passes = [];
        double? rose = null;
        var wasLow = false;
        for (var i = 0; i < millimetres.Length; i++)
        {
            if (millimetres[i] > high && wasLow)
            {
                rose ??= turns[i];
            }
            else if (millimetres[i] < low)
            {
                if (rose is { } from)
                {
                    passes.Add((from + turns[i]) / 2);
                    rose = null;
                }

                wasLow = true;
            }
        }

        return passes;
    }

    /// <summary>The shaft, from the passes: a lobe comes by once a turn of the cam and once in two turns of the crank.</summary>
    public static AngleShaft Shaft(IReadOnlyList<double> passes)
    {
        if (passes.Count < 2)
        {
            return AngleShaft.NotSaid;
        }

        var apart = (passes[^1] - passes[0]) / (passes.Count - 1);
        return apart < Math.Sqrt(2) ? AngleShaft.Cam : AngleShaft.Crank;
    }
}
