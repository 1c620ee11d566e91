using Handspun.Metrology.Runout;

namespace Handspun.Capture.Methods.Lift;

/// <summary>Finds where a disc has its tooth missing, which is the one place that its pulses can be told apart by.</summary>
internal static class MissingTooth
{
    private const double GapIsAtLeast = 1.5;   // a gap of two, by a hand whose speed changes from tooth to tooth
    private const int FewestTurns = 2;

    /// <summary>The capture with a pulse put in wherever one is missing, evenly in time, and zero at the pulse after the gap. As it is where no gap comes back every turn.</summary>
    /// <param name="readings">The capture.</param>
    /// <param name="teeth">Teeth in one turn, the missing one counted.</param>
    public static RotationCapture Filled(RotationCapture readings, int teeth)
    {
        var seconds = readings.IndexSeconds.Span;
        if (seconds.Length < FewestTurns * (teeth - 1))
        {
            return readings;
        }

        var usual = ToothWalk.UsualSeconds(seconds);
        var places = ToothWalk.Places(seconds, usual, teeth);
        List<double> filled = [seconds[0]], gaps = [];
        int? zero = places[0] == 0 ? 0 : null;
        for (var i = 1; i < seconds.Length; i++)
        {
            var passed = (places[i] - places[i - 1] + teeth) % teeth;
            var took = seconds[i] - seconds[i - 1];
            for (var tooth = 1; tooth <= passed; tooth++)
            {
                filled.Add(tooth == passed ? seconds[i] : seconds[i - 1] + took * tooth / passed);
            }

            if (passed > 0 && places[i] < places[i - 1])
            {
                gaps.Add(took / usual[i - 1]);
                zero ??= filled.Count - 1 - places[i];
            }
        }

        gaps.Sort();
        return gaps.Count >= FewestTurns && gaps[(gaps.Count - 1) / 2] >= GapIsAtLeast ? readings with { IndexSeconds = filled.ToArray(), ZeroPulse = zero } : readings;
    }
}
