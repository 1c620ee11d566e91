using Handspun.Metrology.Runout.Faults;
using Handspun.Metrology.Runout.Rotation;

namespace Handspun.Metrology.Runout;

/// <summary>The runout of a shaft that a hand turns, from an indicator's readings alone or with an index, marks or an encoder.</summary>
public static class RunoutMethod
{
    /// <summary>Measures the runout of a capture.</summary>
    public static RunoutResult Measure(RotationCapture capture, GaugeTraits gauge, RunoutSettings settings)
    {
        ArgumentNullException.ThrowIfNull(capture);
        ArgumentNullException.ThrowIfNull(gauge);
        ArgumentNullException.ThrowIfNull(settings);
        return Look(capture, gauge, settings, null);
    }

    /// <summary>The same while the capture goes on, from where an earlier look ended; leaves there what the next look may go on from.</summary>
    internal static RunoutResult Look(RotationCapture capture, GaugeTraits gauge, RunoutSettings settings, EarlierLook? earlier)
    {
        var before = earlier?.Fit;
        earlier?.Fit = null;
        if (CaptureCheck.Fault(capture) is { } fault)
        {
            return new() { Status = RunoutStatus.Rejected, Readings = capture.Millimetres.Length, Missing = fault };
        }

        var trace = Trace.Of(capture.Seconds.Span, capture.Millimetres.Span, gauge.Resolution.Millimetres);
        var moves = Moves(trace) && trace.Range > 0;
        if (!moves && AngleMoves(capture))
        {
            // A shaft that runs true to a digit does not move the reading; that it turned is known all the same.
            trace = Trace.Of(capture.Seconds.Span, capture.Millimetres.Span, gauge.Resolution.Millimetres, trim: false);
            moves = Moves(trace);
        }

        if (!moves)
        {
            return RunoutAnswer.TooShort(capture, trace, 0);
        }

        var found = Find(trace, capture, before);
        if (!Answers(found))
        {
            return RunoutAnswer.TooShort(capture, trace, found.TurnsSeen);
        }

        var fit = found.Fit!;
        var faults = LocalFaults.Find(capture, trace, fit);
        var (suspect, suspects) = (fit, faults);
        if (faults.Count == 0 && earlier is null && !fit.IsAngleTold)   // the finished capture decides; a look has no time for it
        {
            suspect = StiffHand.Fit(trace, fit);
            suspects = LocalFaults.Find(capture, trace, suspect);
        }

        if (suspects.Count > 0)
        {
            // What stands out would bend the profile to itself, so the shaft is fitted once more without it.
            var rest = trace.Without(place => suspects.Any(fault => fault.Holds(suspect.TurnsAt(capture.Seconds.Span[place]))));
            if (Moves(rest) && Find(rest, capture, before) is var again && Answers(again)
                && LocalFaults.Find(capture, rest, again.Fit!) is var confirmed && (confirmed.Count > 0 || faults.Count > 0))
            {
                (trace, fit, faults) = (rest, again.Fit!, confirmed);
            }
        }

        var known = before is null || before.Harmonics != fit.Harmonics ? [] : earlier!.TirByTurnMillimetres;
        var result = RunoutAnswer.Measured(capture, gauge, settings, trace, fit, faults, known);
        if (earlier is not null)
        {
            (earlier.Fit, earlier.TirByTurnMillimetres) = (fit, result.TirByTurnMillimetres);
        }

        return result;
    }

    private static bool Answers(AngleFound found) => found.Fit is { IsFinite: true } fit && fit.TurnsSeen >= RunoutAnswer.FewestTurns;

    private static AngleFound Find(Trace trace, RotationCapture capture, ProfileFit? before) =>
        capture.EncoderSeconds.Length > 1 ? EncoderSearch.Find(trace, capture)
        : (before is null ? null : AngleFollow.From(trace, capture, before)) ?? AngleSearch.Find(trace, capture);

    private static bool Moves(Trace trace) =>
        trace.Seconds.Length >= CaptureCheck.FewestReadings && trace.Seconds[^1] > trace.Seconds[0];

    private static bool AngleMoves(RotationCapture capture)
    {
        if (capture.EncoderSeconds.Length > 1)
        {
            var turns = EncoderAngle.Unwrap(capture.EncoderDegrees.Span);
            return turns[^1] - turns[0] >= RunoutAnswer.FewestTurns;
        }

        return (capture.IndexSeconds.Length - 1) * capture.TurnsPerIndex >= 1;
    }
}
