using Handspun.Metrology.Fitting;

namespace Handspun.Metrology.Runout.Rotation;

/// <summary>First guesses of the angle where an index tells some angles.</summary>
internal static class IndexStarts
{
    private const double LargestMiss = 0.2;

    /// <summary>The angle from the pulses alone, at even speed between them and beyond them; null where fewer than two came.</summary>
    public static TurnStart? Even(double[] seconds, IReadOnlyList<AngleAnchor> anchors)
    {
        if (anchors.Count < 2)
        {
            return null;
        }

        double[] times = [.. anchors.Select(anchor => anchor.Seconds)];
        double[] turns = [.. anchors.Select(anchor => anchor.Turns)];
        var first = (turns[1] - turns[0]) / Math.Max(1e-6, times[1] - times[0]);
        var last = (turns[^1] - turns[^2]) / Math.Max(1e-6, times[^1] - times[^2]);
        return new(0, [.. seconds.Select(at =>
            at < times[0] ? turns[0] - first * (times[0] - at)
            : at > times[^1] ? turns[^1] + last * (at - times[^1])
            : EncoderAngle.Between(times, turns, at))]);
    }

    /// <summary>A guess from reversals bent so that it meets the pulses; null where it counts turns otherwise than they do.</summary>
    public static TurnStart? Bend(TurnStart start, double[] seconds, IReadOnlyList<AngleAnchor> anchors)
    {
        double[] times = [.. anchors.Select(anchor => anchor.Seconds)];
        double[] misses = [.. anchors.Select(anchor => anchor.Turns - EncoderAngle.Between(seconds, start.Turns, anchor.Seconds))];
        var mean = misses.Average();
        return misses.All(miss => Math.Abs(miss - mean) < LargestMiss)
            ? start with { Turns = [.. start.Turns.Select((turn, i) => turn + EncoderAngle.Between(times, misses, seconds[i]))] }
            : null;
    }
}
