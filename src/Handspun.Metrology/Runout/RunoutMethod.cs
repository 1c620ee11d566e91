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
        if (trace.Seconds.Length < CaptureCheck.FewestReadings || trace.Seconds[^1] <= trace.Seconds[0])
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
}
