using Handspun.Metrology.Runout.Rotation;

namespace Handspun.Metrology.Runout;

/// <summary>The runout of a shaft that a hand turns, from an indicator's readings alone or with an index, marks or an encoder.</summary>
public static class RunoutMethod
{
    /// <summary>Measures the runout. The same for a finished capture, a replayed one, and one that still goes on.</summary>
    public static RunoutResult Measure(RotationCapture capture, GaugeTraits gauge, RunoutSettings settings)
    {
        ArgumentNullException.ThrowIfNull(capture);
        ArgumentNullException.ThrowIfNull(gauge);
        ArgumentNullException.ThrowIfNull(settings);
        var readings = capture.Millimetres.Length;
        if (CaptureCheck.Fault(capture) is { } fault)
        {
            return new() { Status = RunoutStatus.Rejected, Readings = readings, Missing = fault };
        }

        var trace = Trace.Of(capture.Seconds.Span, capture.Millimetres.Span, gauge.Resolution.Millimetres);
        if (!Moves(trace) && AngleMoves(capture))
        {
            // A shaft that runs true to a digit does not move the reading; that it turned is known all the same.
            trace = Trace.Of(capture.Seconds.Span, capture.Millimetres.Span, gauge.Resolution.Millimetres, trim: false);
        }

        if (!Moves(trace))
        {
            return RunoutAnswer.TooShort(capture, trace, 0);
        }

        var found = capture.EncoderSeconds.Length > 1
            ? EncoderSearch.Find(trace, capture)
            : AngleSearch.Find(trace, capture);
        return found.Fit is { IsFinite: true } fit && fit.TurnsSeen >= RunoutAnswer.FewestTurns
            ? RunoutAnswer.Measured(capture, gauge, settings, trace, fit)
            : RunoutAnswer.TooShort(capture, trace, found.TurnsSeen);
    }

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
