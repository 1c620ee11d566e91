namespace Handspun.Metrology.Runout;

/// <summary>The stretches before the hand moves and after it stops.</summary>
internal static class Standing
{
    private const int FewestStill = 5;

    /// <summary>The readings from the first movement to the last: from a place up to, not including, another.</summary>
    /// <param name="millimetres">The readings.</param>
    /// <param name="wild">Which of them stand alone; they do not count.</param>
    /// <param name="flicker">How far readings of a shaft that stands lie from their mean at most, in millimetres.</param>
    public static (int From, int To) Trim(ReadOnlySpan<double> millimetres, bool[] wild, double flicker)
    {
        var from = Still(millimetres, wild, flicker, 0, 1);
        var after = Still(millimetres, wild, flicker, millimetres.Length - 1, -1);
        return from + after >= millimetres.Length ? (millimetres.Length, millimetres.Length) : (from, millimetres.Length - after);
    }

    // How many readings from one end, going inwards, stay at one level; a few in a row off it are movement.
    private static int Still(ReadOnlySpan<double> millimetres, bool[] wild, double flicker, int end, int way)
    {
        const int row = 3;
        var (sum, count, off, lastAtRest) = (0.0, 0, 0, 0);
        for (var i = 0; i < millimetres.Length; i++)
        {
            var reading = millimetres[end + way * i];
            if (wild[end + way * i])
            {
                continue;
            }

            if (count > 0 && Math.Abs(reading - sum / count) > flicker)
            {
                if (++off == row)
                {
                    return count < FewestStill ? 0 : lastAtRest;
                }

                continue;
            }

            (sum, off, lastAtRest) = (sum + reading, 0, i + 1);
            count++;
            if (count > 40)
            {
                // A stand that creeps moves the level with it.
                sum *= 40.0 / 41;
                count = 40;
            }
        }

        return count < FewestStill ? 0 : millimetres.Length;
    }
}
