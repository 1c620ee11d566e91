using Handspun.Metrology.Runout;

namespace Handspun.Capture.Methods.Lift;

/// <summary>Finds where a disc has its tooth missing, which is the one place that its pulses can be told apart by.</summary>
internal static class MissingTooth
{
    private const double GapIsAtLeast = 1.5;   // a gap of two, by a hand whose speed changes from tooth to tooth
    private const int FewestTurns = 2;

    /// <summary>The capture with a pulse put into each gap, half way in time, and zero at the pulse after it. As it is where no gap comes back every turn.</summary>
    /// <param name="readings">The capture.</param>
    /// <param name="teeth">Teeth in one turn, the missing one counted.</param>
    public static RotationCapture Filled(RotationCapture readings, int teeth)
    {
        var seconds = readings.IndexSeconds.Span;
        var pulses = teeth - 1;
        if (seconds.Length < FewestTurns * pulses || GapBefore(seconds, pulses) is not { } gap)
        {
            return readings;
        }

        List<double> filled = [seconds[0]];
        int? zero = gap == 0 ? 0 : null;
        for (var i = 1; i < seconds.Length; i++)
        {
            if (i % pulses == gap)
            {
                filled.Add((seconds[i - 1] + seconds[i]) / 2);
                zero ??= filled.Count;
            }

            filled.Add(seconds[i]);
        }

        return readings with { IndexSeconds = filled.ToArray(), ZeroPulse = zero };
    }

    // Every turn has as many pulses, so the gap is always before the same one of them; a hand that halts does so anywhere.
    private static int? GapBefore(ReadOnlySpan<double> seconds, int pulses)
    {
        var (best, most) = (0, 0.0);
        for (var place = 0; place < pulses; place++)
        {
            List<double> ratios = [];
            for (var i = place == 0 ? pulses : place; i < seconds.Length; i += pulses)
            {
                var beside = new List<double>();
                if (i >= 2)
                {
                    beside.Add(seconds[i - 1] - seconds[i - 2]);
                }

                if (i + 1 < seconds.Length)
                {
                    beside.Add(seconds[i + 1] - seconds[i]);
                }

                ratios.Add((seconds[i] - seconds[i - 1]) / Math.Max(1e-9, beside.DefaultIfEmpty(double.MaxValue).Average()));
            }

            ratios.Sort();
            var middle = ratios.Count == 0 ? 0 : ratios[(ratios.Count - 1) / 2];
            (best, most) = middle > most ? (place, middle) : (best, most);
        }

        return most >= GapIsAtLeast ? best : null;
    }
}
