namespace Handspun.Simulation;

/// <summary>What an indicator on a stand shows of something that moves: creep of the stand, knocks and rounding included.</summary>
internal static class Recording
{
    /// <summary>The readings of one capture and their times in seconds.</summary>
    /// <param name="heightAt">The true height in millimetres at a time in seconds.</param>
    /// <param name="length">How long the capture takes.</param>
    /// <param name="indicator">The gauge; its stuck stretches, bursts and jitter are not played.</param>
    /// <param name="bumps">How often the stand is knocked, so that the reading swings off and back.</param>
    /// <param name="chance">Where the draws come from.</param>
    public static (double[] Seconds, double[] Millimetres) Of(Func<double, double> heightAt, double length, Indicator indicator, int bumps, Random chance)
    {
        var (seconds, readings, _) = About(heightAt, length, indicator, bumps, chance);
        return (seconds, readings);
    }

    /// <summary>The same, with the mean level of the stand over the capture, creep included, in millimetres.</summary>
    public static (double[] Seconds, double[] Millimetres, double Level) About(
        Func<double, double> heightAt, double length, Indicator indicator, int bumps, Random chance)
    {
        var level = chance.NextBetween(-0.4, 0.4);
        var bend = chance.NextBetween(-0.5, 0.5);   // a stand that warms creeps fast at first, or later
        var swings = Enumerable.Range(0, bumps)
            .Select(_ => (At: chance.NextBetween(0.05, 0.95) * length, Size: 0.06 * chance.NextBetween(0.4, 1) * (chance.Next(2) == 0 ? 1 : -1)))
            .ToArray();
        var readings = new double[(int)(length * indicator.RateHz) + 1];
        var seconds = new double[readings.Length];
        for (var i = 0; i < readings.Length; i++)
        {
            var time = i / indicator.RateHz;
            var part = time / length;
            var creep = indicator.DriftMicrometres / 1000 * (part + bend * part * (1 - part));
            var swing = swings.Where(bump => time >= bump.At).Sum(bump => bump.Size * Math.Exp(-(time - bump.At) / 0.06) * Math.Cos(40 * (time - bump.At)));
            (seconds[i], readings[i]) = (time, indicator.Show(level + creep + swing + heightAt(time), chance));
        }

        for (var knock = 0; knock < indicator.Knocks; knock++)
        {
            readings[chance.Next(readings.Length)] += indicator.KnockMillimetres * chance.NextBetween(0.4, 1) * (chance.Next(2) == 0 ? 1 : -1);
        }

        return (seconds, readings, level + indicator.DriftMicrometres / 1000 * (0.5 + bend / 6));
    }
}
