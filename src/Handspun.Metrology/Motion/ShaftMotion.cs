using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;

namespace Handspun.Metrology.Motion;

/// <summary>Tells a shaft that turns or moves under the indicator from one that stands still.</summary>
public static class ShaftMotion
{
    private const double LongestLook = 0.8;
    private const int ReadingsOfALook = 8;

    private const int FewestReadings = 4;

    // A stand creeps by micrometres a minute, a hand moves the plunger by micrometres in tenths of a second.
    private const double CreepMillimetresPerSecond = 0.002;

    /// <summary>Whether the readings, a stretch of about half a second to three seconds, show the shaft moving rather than noise, a flickering last digit, one knock or a slow drift.</summary>
    /// <param name="seconds">When each was taken, in seconds; never decreasing.</param>
    /// <param name="millimetres">What each was, in millimetres.</param>
    /// <param name="resolution">The gauge's step; zero where it is not known.</param>
    /// <returns>False also where there are fewer than four readings, or as many times as readings are not there.</returns>
    public static bool IsTurning(ReadOnlySpan<double> seconds, ReadOnlySpan<double> millimetres, Length resolution)
    {
        if (millimetres.Length < FewestReadings || seconds.Length != millimetres.Length)
        {
            return false;
        }

        var step = resolution > Length.Zero ? resolution.Millimetres : ReadingNoise.Step(millimetres);
        var noise = Math.Max(ReadingNoise.Between(millimetres), step / Math.Sqrt(12));
        var wild = Knocks.Find(millimetres, noise);
        var allowed = CreepMillimetresPerSecond * (seconds[^1] - seconds[0]) + Math.Max(1.5 * step, 3 * noise);

        // Means of a quarter of the stretch each: noise and a flickering digit average out, movement does not.
        const int parts = 4;
        var (low, high) = (double.MaxValue, double.MinValue);
        for (var part = 0; part < parts; part++)
        {
            var (from, to) = (part * millimetres.Length / parts, (part + 1) * millimetres.Length / parts);
            var (sum, count) = (0.0, 0);
            for (var i = from; i < to; i++)
            {
                if (!wild[i])
                {
                    sum += millimetres[i];
                    count++;
                }
            }

            if (count > 0)
            {
                (low, high) = (Math.Min(low, sum / count), Math.Max(high, sum / count));
            }
        }

        return high - low > allowed;
    }

    /// <summary>Whether the readings show a movement anywhere in a longer stretch, also one to and fro whose means are all alike.</summary>
    /// <param name="seconds">When each was taken, in seconds; never decreasing.</param>
    /// <param name="millimetres">What each was, in millimetres.</param>
    /// <param name="resolution">The gauge's step; zero where it is not known.</param>
    /// <returns>False also where there are fewer than four readings, or as many times as readings are not there.</returns>
    public static bool MovesAnywhere(ReadOnlySpan<double> seconds, ReadOnlySpan<double> millimetres, Length resolution)
    {
        if (seconds.Length != millimetres.Length)
        {
            return false;
        }

        for (var from = 0; from < seconds.Length;)
        {
            var to = Math.Min(seconds.Length, from + ReadingsOfALook);
            while (to < seconds.Length && seconds[to] - seconds[from] <= LongestLook)
            {
                to++;
            }

            if (IsTurning(seconds[from..to], millimetres[from..to], resolution))
            {
                return true;
            }

            if (to == seconds.Length)
            {
                break;
            }

            from += Math.Max(1, (to - from) / 2);
        }

        return false;
    }
}
