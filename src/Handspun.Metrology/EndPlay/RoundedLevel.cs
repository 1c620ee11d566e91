using MathNet.Numerics;

namespace Handspun.Metrology.EndPlay;

/// <summary>How likely each level is under the rounded readings of one hold: a reading only says within which step of the gauge it fell.</summary>
internal sealed class RoundedLevel
{
    private const int Places = 201;

    // Readings of one hold are not independent: the pressure of the hand wanders. More than so many say no more.
    private const double MostReadings = 25;

    // One reading in fifty may be none of the hold, and then fell anywhere in ten steps.
    private const double Unlikely = 0.02 / 10;

    private readonly double[] _levels = new double[Places];
    private readonly double[] _likelihood = new double[Places];

    private RoundedLevel()
    {
    }

    /// <summary>The logarithm of the likelihood's integral over all levels: how well the noise explains how the readings spread over steps.</summary>
    public double LogEvidence { get; private set; }

    /// <summary>The likelihood of one hold.</summary>
    /// <param name="values">Its readings, in millimetres. At least one.</param>
    /// <param name="step">The gauge's step; 0 or more.</param>
    /// <param name="noise">Standard deviation before rounding; above 0.</param>
    public static RoundedLevel Of(double[] values, double step, double noise)
    {
        var level = new RoundedLevel();
        var weight = Math.Min(1, MostReadings / values.Length);
        var mean = values.Average();
        var reach = 0.6 * step + 5 * noise / Math.Sqrt(weight * values.Length);
        var logs = new double[Places];
        var groups = values.GroupBy(value => value).Select(group => (Value: group.Key, Weight: weight * group.Count())).ToArray();
        for (var i = 0; i < Places; i++)
        {
            var at = mean + reach * (2.0 * i / (Places - 1) - 1);
            level._levels[i] = at;
            logs[i] = step > 0.3 * noise
                ? groups.Sum(group => group.Weight * Math.Log(Within(group.Value - at, step, noise) + Unlikely))
                : -0.5 * weight * values.Length * (mean - at) * (mean - at) / (noise * noise);
        }

        var most = logs.Max();
        for (var i = 0; i < Places; i++)
        {
            level._likelihood[i] = Math.Exp(logs[i] - most);
        }

        level.LogEvidence = most + Math.Log(level._likelihood.Sum() * 2 * reach / (Places - 1));
        return level;
    }

    /// <summary>Mean and variance of the hold's level where it is expected at a place with a variance.</summary>
    public (double Mean, double Variance) Given(double expected, double variance)
    {
        var (sum, first, second) = (0.0, 0.0, 0.0);
        for (var i = 0; i < Places; i++)
        {
            var off = _levels[i] - expected;
            var weight = _likelihood[i] * Math.Exp(-0.5 * off * off / variance);
            sum += weight;
            first += weight * off;
            second += weight * off * off;
        }

        if (sum < 1e-250)
        {
            // Expected far outside what the readings allow: the nearest level that they allow.
            var nearest = Math.Clamp(expected, _levels[0], _levels[^1]);
            return (nearest, Math.Pow((_levels[^1] - _levels[0]) / 6, 2));
        }

        var mean = first / sum;
        return (expected + mean, Math.Max(1e-14, second / sum - mean * mean));
    }

    private static double Within(double off, double step, double noise)
    {
        // Both tails from the side on which the difference keeps its digits.
        var near = (Math.Abs(off) - step / 2) / noise;
        var far = (Math.Abs(off) + step / 2) / noise;
        return 0.5 * (SpecialFunctions.Erfc(near / Constants.Sqrt2) - SpecialFunctions.Erfc(far / Constants.Sqrt2));
    }
}
