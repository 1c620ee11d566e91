using Handspun.Jobs.Records;
using Handspun.Metrology.Runout;

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

        if (run.SoFar is { Status: RunoutStatus.Measured } soFar && soFar.Turns >= run.Task.TurnsWanted)
        {
            return CaptureEnding.Enough;
        }

        if (run.HasTurned && !run.IsTurning && run.Newest - run.From > settings.StandStill)
        {
            return CaptureEnding.StoodStill;
        }

        return now - run.From > settings.Longest ? CaptureEnding.TooLong : null;
    }

    /// <summary>Whether the shaft was only touched, so that there is nothing to record.</summary>
    public static bool WasOnlyTouched(CaptureEnding ending, RunoutResult result, BaySettings settings) =>
        ending == CaptureEnding.StoodStill && result.Status != RunoutStatus.Measured && result.Turns < settings.TouchTurns;
}
