namespace Handspun.Metrology.Runout;

/// <summary>The stretches before the hand moves and after it stops.</summary>
internal static class Standing
{
    /// <summary>The readings from the first movement to the last: from a place up to, not including, another.</summary>
    public static (int From, int To) Trim(ReadOnlySpan<double> millimetres, bool[] wild, double flicker)
    {
        var from = Still(millimetres, wild, flicker, 0, 1);
        var to = millimetres.Length - 1;
        to -= from >= millimetres.Length ? 0 : Still(millimetres, wild, flicker, millimetres.Length - 1, -1);
        return from >= to ? (millimetres.Length, millimetres.Length) : (from, to + 1);
    }

    // How many readings from one end, going inwards, stay within the flicker; the last few of them already belong to the movement.
    private static int Still(ReadOnlySpan<double> millimetres, bool[] wild, double flicker, int end, int way)
    {
        var (low, high) = (double.MaxValue, double.MinValue);
        for (var still = 0; still < millimetres.Length; still++)
        {
            var place = end + way * still;
            if (wild[place])
            {
                continue;
            }

            low = Math.Min(low, millimetres[place]);
            high = Math.Max(high, millimetres[place]);
            if (high - low > 2 * flicker)
            {
                // The stretch that led to this reading is movement: go back to where the level was last that of the rest.
                return Math.Max(0, LastAtRest(millimetres, wild, end, way, still, flicker));
            }
        }

        return millimetres.Length;
    }

    private static int LastAtRest(ReadOnlySpan<double> millimetres, bool[] wild, int end, int way, int still, double flicker)
    {
        if (still < 6)
        {
            return 0;
        }

        var rest = new double[still / 2];
        var count = 0;
        for (var i = 0; i < rest.Length; i++)
        {
            if (!wild[end + way * i])
            {
                rest[count++] = millimetres[end + way * i];
            }
        }

        Array.Sort(rest, 0, count);
        var level = rest[count / 2];
        for (var i = still; i > 0; i--)
        {
            if (!wild[end + way * i] && Math.Abs(millimetres[end + way * i] - level) < flicker / 2)
            {
                return i;
            }
        }

        return 0;
    }
}
