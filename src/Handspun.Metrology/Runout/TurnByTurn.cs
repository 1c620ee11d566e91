using Handspun.Metrology.Fitting;

namespace Handspun.Metrology.Runout;

/// <summary>The runout of each whole turn by itself.</summary>
internal static class TurnByTurn
{
    /// <summary>Fits the profile's order anew to the readings of each whole turn, drift taken out; millimetres, in order.</summary>
    public static double[] Runouts(Trace trace, ProfileFit fit, double floor)
    {
        List<double> runouts = [];
        var place = 0;
        for (var turn = 0; turn + 1 <= fit.TurnsSeen + 1e-6; turn++)
        {
            List<double> turns = [];
            List<double> heights = [];
            for (; place < fit.Turns.Length && fit.Turns[place] - fit.Turns[0] < turn + 1; place++)
            {
                if (fit.Weights[place] > 0)
                {
                    turns.Add(fit.Turns[place]);
                    heights.Add(trace.Millimetres[place] - fit.Drift(trace.Course(place)));
                }
            }

            if (turns.Count >= 4 * fit.Harmonics + 4)
            {
                var own = new KnownAngleFit([.. turns], [.. heights], [], fit.Harmonics, 0, floor);
                runouts.Add(ProfileExtremes.Of(own.Series, fit.Harmonics).Movement);
            }
        }

        return [.. runouts];
    }
}
