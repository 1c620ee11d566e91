namespace Handspun.Metrology.Bore;

/// <summary>The rocks of a capture: where the reading turned, at the bottom of a pass and at the end of a swing.</summary>
/// <param name="From">The first reading that belongs to a swing.</param>
/// <param name="To">One past the last.</param>
/// <param name="Bottoms">The lowest reading of each pass, by its place, in order.</param>
/// <param name="Tops">The highest reading between two passes; one fewer than bottoms.</param>
/// <param name="Height">How far the reading usually climbs from a pass to the end of a swing, in millimetres.</param>
internal sealed record Rocks(int From, int To, IReadOnlyList<int> Bottoms, IReadOnlyList<int> Tops, double Height)
{
    private const double OfTheSwing = 0.15;
    private const int MostPasses = 20;

    /// <summary>Finds them: a turn counts when the reading then moves back by more than noise, steps and a part of the whole swing can make it.</summary>
    /// <param name="millimetres">Readings without knocks, larger where the gauge spans more.</param>
    /// <param name="noise">Standard deviation from one reading to the next.</param>
    /// <param name="step">The gauge's step.</param>
    public static Rocks? Find(double[] millimetres, double noise, double step)
    {
        double[] sorted = [.. millimetres.Order()];
        var swing = sorted[(int)(0.95 * (sorted.Length - 1))] - sorted[0];
        var least = Math.Max(OfTheSwing * swing, Math.Max(6 * noise, 2.2 * step));
        if (swing < least)
        {
            return null;
        }

        List<int> bottoms = [], tops = [];
        var (low, high, falling) = (0, 0, false);
        var started = false;
        for (var i = 1; i < millimetres.Length; i++)
        {
            low = millimetres[i] < millimetres[low] ? i : low;
            high = millimetres[i] > millimetres[high] ? i : high;
            if ((!started || falling) && millimetres[i] - millimetres[low] > least)
            {
                // The first reading may be anywhere on a swing: a bottom there is none unless the reading fell to it.
                if (started || millimetres[0] - millimetres[low] > least / 3)
                {
                    bottoms.Add(low);
                }

                (started, falling, high) = (true, false, i);
            }
            else if ((!started || !falling) && millimetres[high] - millimetres[i] > least)
            {
                tops.Add(high);
                (started, falling, low) = (true, true, i);
            }
        }

        return bottoms.Count == 0 ? null : Between(millimetres, bottoms, tops, least);
    }

    private static Rocks Between(double[] millimetres, List<int> bottoms, List<int> tops, double least)
    {
        bottoms = [.. bottoms.TakeLast(MostPasses)];
        var inner = tops.Where(top => top > bottoms[0] && top < bottoms[^1]).ToList();
        var before = tops.LastOrDefault(top => top < bottoms[0], 0);
        var after = tops.FirstOrDefault(top => top > bottoms[^1], LastClimb(millimetres, bottoms[^1], least));
        var climbs = bottoms.Zip(inner.Append(after), (bottom, top) => millimetres[top] - millimetres[bottom]).Order().ToArray();
        return new(before, after + 1, bottoms, inner, climbs[climbs.Length / 2]);
    }

    // Where the readings end, or fall back from the highest, after the last pass.
    private static int LastClimb(double[] millimetres, int bottom, double least)
    {
        var top = bottom;
        for (var i = bottom; i < millimetres.Length && millimetres[top] - millimetres[i] < least; i++)
        {
            top = millimetres[i] > millimetres[top] ? i : top;
        }

        return top;
    }
}
