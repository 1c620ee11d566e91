using Handspun.Metrology.Fitting;

namespace Handspun.Metrology.Runout.Rotation;

/// <summary>Index pulses as angles, and their repair where some were missed or came twice.</summary>
internal static class IndexPulses
{
    // A pulse is a narrow slot in a disc and a few milliseconds of travel through the machine.
    private const double DoubtTurns = 0.003;
    // A call comes about a twentieth of a second early or late (from memory of reaction to a foreseen event).
    private const double CallDoubtTurns = 0.04;
    private const double BounceSeconds = 0.02;
    private const double Agrees = 0.2;
    private const double Clear = 0.12;

    /// <summary>The pulses within the trace, counted one after the other; a contact that bounces counts once.</summary>
    public static List<AngleAnchor> Count(ReadOnlySpan<double> seconds, double turnsPerIndex, Trace trace) =>
        Number(seconds, turnsPerIndex, trace, DoubtTurns);

    /// <summary>The calls of the reference mark within the trace, one a turn.</summary>
    public static List<AngleAnchor> CountMarks(ReadOnlySpan<double> seconds, Trace trace) =>
        Number(seconds, 1, trace, CallDoubtTurns);

    /// <summary>
    /// The pulses counted anew where the readings clearly show that some are missing or too many; null where the plain
    /// count agrees with the readings or nothing else does better.
    /// </summary>
    /// <param name="anchors">Pulses as <see cref="Count"/> gave them.</param>
    /// <param name="turnsPerIndex">Shaft turns from one pulse to the next.</param>
    /// <param name="seconds">Times of the readings.</param>
    /// <param name="starts">Guesses of the angle from the readings alone.</param>
    public static List<AngleAnchor>? Recount(
        IReadOnlyList<AngleAnchor> anchors, double turnsPerIndex, double[] seconds, IReadOnlyList<TurnStart> starts)
    {
        List<AngleAnchor>? best = null;
        var least = Clear;
        foreach (var start in anchors.Count < 3 ? [] : starts)
        {
            double[] gaps = [.. anchors.Zip(anchors.Skip(1), (one, next) =>
                (EncoderAngle.Between(seconds, start.Turns, next.Seconds) - EncoderAngle.Between(seconds, start.Turns, one.Seconds)) / turnsPerIndex)];
            if (gaps.All(gap => Math.Abs(gap - 1) < Agrees / Math.Min(1, turnsPerIndex)))
            {
                return null;
            }

            // Most gaps must be one pulse: a wrong guess of the turns would make all of them two, or a half.
            var miss = gaps.Average(gap => Math.Abs(gap - Math.Round(gap)));
            if (miss < least && gaps.Count(gap => Math.Round(gap) == 1) > gaps.Length / 2)
            {
                (least, best) = (miss, Renumber(anchors, gaps, turnsPerIndex));
            }
        }

        return best;
    }

    private static List<AngleAnchor> Renumber(IReadOnlyList<AngleAnchor> anchors, double[] gaps, double turnsPerIndex)
    {
        List<AngleAnchor> renumbered = [anchors[0]];
        for (var i = 0; i < gaps.Length; i++)
        {
            if (Math.Round(gaps[i]) is var pulses and > 0)
            {
                renumbered.Add(anchors[i + 1] with { Turns = renumbered[^1].Turns + pulses * turnsPerIndex });
            }
        }

        return renumbered;
    }

    private static List<AngleAnchor> Number(ReadOnlySpan<double> seconds, double turnsPerIndex, Trace trace, double doubt)
    {
        List<AngleAnchor> anchors = [];
        var (number, before) = (-1, double.NegativeInfinity);
        foreach (var time in seconds)
        {
            if (time - before < BounceSeconds)
            {
                continue;
            }

            number++;
            before = time;
            if (time >= trace.Seconds[0] && time <= trace.Seconds[^1])
            {
                anchors.Add(new(time, number * turnsPerIndex, doubt));
            }
        }

        return anchors;
    }
}
