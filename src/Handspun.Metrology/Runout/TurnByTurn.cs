using Handspun.Metrology.Fitting;

namespace Handspun.Metrology.Runout;

/// <summary>The runout of each whole turn by itself.</summary>
internal static class TurnByTurn
{
    /// <summary>Fits the profile's order anew to the readings of each whole turn, drift taken out; millimetres, in order, turns with too few readings left out.</summary>
    /// <param name="trace">The readings.</param>
    /// <param name="fit">Their angles.</param>
    /// <param name="floor">The least that noise is taken for, in millimetres.</param>
    /// <param name="known">The first of them where they are known already.</param>
    public static double[] Runouts(Trace trace, ProfileFit fit, double floor, IReadOnlyList<double> known)
    {
        List<double> runouts = [];
        var place = 0;
        for (var turn = 0; turn + 1 <= fit.TurnsSeen + 1e-6; turn++)
        {
            var first = place;
            var count = 0;
            for (; place < fit.Turns.Length && fit.Turns[place] - fit.Turns[0] < turn + 1; place++)
            {
                count += fit.Weights[place] > 0 ? 1 : 0;
            }

            if (count >= 4 * fit.Harmonics + 4)
            {
                runouts.Add(runouts.Count < known.Count ? known[runouts.Count] : Runout(trace, fit, floor, first, place));
            }
        }

        return [.. runouts];
    }

    private static double Runout(Trace trace, ProfileFit fit, double floor, int from, int to)
    {
        List<double> turns = [];
        List<double> heights = [];
        for (var place = from; place < to; place++)
        {
            if (fit.Weights[place] > 0)
            {
                turns.Add(fit.Turns[place]);
                heights.Add(trace.Millimetres[place] - fit.Drift(trace.Course(place)));
            }
        }

        var own = new KnownAngleFit([.. turns], [.. heights], [], fit.Harmonics, 0, floor);
        return ProfileExtremes.Of(own.Series, fit.Harmonics).Movement;
    }
}
