namespace Handspun.Metrology.EndPlay;

/// <summary>The noise of the readings within holds, before the gauge rounds them.</summary>
internal static class HoldNoise
{
    private const double LeastMillimetres = 0.0001;
    private const int Tries = 10;

    /// <summary>Standard deviation in millimetres, above 0.</summary>
    /// <param name="values">The readings of each hold.</param>
    /// <param name="step">The gauge's step; 0 or more.</param>
    /// <remarks>
    /// Where the readings spread over several steps, their variance less that of the rounding (Sheppard's correction).
    /// Where they spread over one or two, the mean over all that is likely, each size of noise being as likely beforehand.
    /// </remarks>
    public static double Of(IReadOnlyList<double[]> values, double step)
    {
        var (squares, free) = (0.0, 0);
        foreach (var hold in values)
        {
            var mean = hold.Average();
            squares += hold.Sum(value => (value - mean) * (value - mean));
            free += hold.Length - 1;
        }

        var variance = squares / Math.Max(1, free);
        if (free >= 4 && variance > 0.35 * step * step)
        {
            return Math.Max(LeastMillimetres, Math.Sqrt(variance - step * step / 12));
        }

        var (least, most) = (Math.Max(LeastMillimetres, step / 60), Math.Max(2 * LeastMillimetres, 0.8 * step));
        var sizes = Enumerable.Range(0, Tries).Select(i => least * Math.Pow(most / least, i / (Tries - 1.0))).ToArray();
        var logs = sizes.Select(noise => values.Sum(hold => RoundedLevel.Of(hold, step, noise).LogEvidence)).ToArray();
        var best = logs.Max();
        var weights = logs.Select(log => Math.Exp(log - best)).ToArray();
        return sizes.Zip(weights, (noise, weight) => noise * weight).Sum() / weights.Sum();
    }
}
