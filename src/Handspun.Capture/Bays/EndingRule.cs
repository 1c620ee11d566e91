using Handspun.Capture.Methods;
using Handspun.Jobs.Records;

namespace Handspun.Capture.Bays;

/// <summary>When a capture has enough, or cannot go on.</summary>
internal static class EndingRule
{
    /// <summary>Why the capture ends now; null where it goes on.</summary>
    public static CaptureEnding? For(CaptureRun run, TimeSpan now, BaySettings settings)
    {
        if (run.GaugeGoneSince is { } since)
        {
            return now - since > settings.GaugeGone ? CaptureEnding.GaugeLost : null;
        }

        if (run.SoFar.IsEnough(run.Task.Wanted))
        {
            return CaptureEnding.Enough;
        }

        if (run.HasMoved && !run.IsMoving && run.Newest - run.From > run.Task.Method.Pace.StandStill)
        {
            return CaptureEnding.StoodStill;
        }

        return now - run.From > settings.Longest ? CaptureEnding.TooLong : null;
    }

    /// <summary>Whether the capture was no more than a touch, so that there is nothing to record.</summary>
    public static bool WasOnlyTouched(CaptureEnding ending, CaptureFinding finding) =>
        ending == CaptureEnding.StoodStill && finding.IsOnlyTouch;
}
