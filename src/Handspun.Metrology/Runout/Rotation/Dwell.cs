namespace Handspun.Metrology.Runout.Rotation;

/// <summary>How much each reading tells that the one before it did not.</summary>
internal static class Dwell
{
    private const double Window = 0.15;
    private const double Slow = 0.3;
    private const double Least = 0.02;

    /// <summary>
    /// A share from nearly 0 to 1 for each reading. While the hand rests, reading after reading has the same rounding at
    /// the same angle: together they tell hardly more than one, and a fit that took them for many would be too sure.
    /// </summary>
    /// <param name="seconds">Times of the readings.</param>
    /// <param name="turns">Their angles, roughly.</param>
    public static double[] Shares(double[] seconds, double[] turns)
    {
        var shares = new double[seconds.Length];
        var even = Math.Abs(turns[^1] - turns[0]) / (turns.Length - 1);
        var (from, to) = (0, 0);
        for (var i = 0; i < shares.Length; i++)
        {
            while (seconds[i] - seconds[from] > Window && from < i - 1)
            {
                from++;
            }

            while (to + 1 < seconds.Length && (seconds[to + 1] - seconds[i] <= Window || to < i + 1))
            {
                to++;
            }

            var step = Math.Abs(turns[to] - turns[from]) / (to - from);
            shares[i] = Math.Clamp(step / (Slow * even), Least, 1);
        }

        return shares;
    }
}
