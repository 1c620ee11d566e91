using System.Globalization;
using Handspun.Capture.Bays;
using Handspun.Metrology.Runout;

namespace Handspun.Capture.Progress;

/// <summary>What the hand on the wheel is told.</summary>
internal static class CaptureSentence
{
    private const double FewestReadingsPerTurn = 12;   // fewer, and 3.4 % of the amplitude can hide between two readings: 1 - cos(180°/12)

    public static string Waiting => "Turn the wheel by hand, slowly and evenly. The capture starts by itself.";

    public static string Again => "Turn the wheel again for another record; the newest counts.";

    public static string Touched => "The shaft moved and stopped. Turn the wheel by hand, slowly and evenly.";

    public static string GaugeGone => "The gauge is gone: plug it in again and keep turning.";

    public static string Ended => "Enough. Stop turning.";

    public static string StoodDown => "The point was let go.";

    public static string Turning(BayTask task, RunoutResult? soFar, double readingsPerSecond, int marks)
    {
        if (soFar is null || soFar.Turns <= 0)
        {
            return "Turning. Keep on, slowly and evenly.";
        }

        if (soFar.TurnsPerSecond > 0 && readingsPerSecond / soFar.TurnsPerSecond < FewestReadingsPerTurn)
        {
            var seconds = FewestReadingsPerTurn / readingsPerSecond;
            return string.Create(CultureInfo.InvariantCulture, $"Turn slower: this gauge needs at least {seconds:0.0} seconds a turn.");
        }

        var seen = string.Create(CultureInfo.InvariantCulture, $"Keep turning: {Math.Min(soFar.Turns, task.TurnsWanted):0.0} of {task.TurnsWanted:0.#} turns");
        var left = soFar.TurnsPerSecond > 0 ? Math.Ceiling((task.TurnsWanted - soFar.Turns) / soFar.TurnsPerSecond) : 0;
        var going = left is > 0 and < 60 ? string.Create(CultureInfo.InvariantCulture, $"{seen}, about {left:0} s to go.") : seen + ".";
        return marks switch
        {
            0 => going,
            1 => going + " The mark is noted.",
            _ => string.Create(CultureInfo.InvariantCulture, $"{going} The mark is noted {marks} times."),
        };
    }
}
