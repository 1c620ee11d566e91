using ScottPlot;

namespace Handspun.Pictures.Page;

/// <summary>Makes a long line short without changing how it looks.</summary>
internal static class Thinned
{
    /// <summary>Keeps the first, lowest, highest and last point of each column, in order; a line with few points stays as it is.</summary>
    /// <param name="line">Points of a line that runs from left to right.</param>
    /// <param name="columns">As many as can be told apart on the page.</param>
    public static Coordinates[] To(IReadOnlyList<Coordinates> line, int columns)
    {
        if (line.Count <= 4 * columns)
        {
            return [.. line];
        }

        var (left, right) = (line.Min(at => at.X), line.Max(at => at.X));
        var width = right > left ? (right - left) / columns : 1;
        var kept = new List<Coordinates>(4 * columns);
        for (var from = 0; from < line.Count;)
        {
            var column = Math.Floor((line[from].X - left) / width);
            var (low, high, to) = (from, from, from);
            for (; to < line.Count && Math.Floor((line[to].X - left) / width) == column; to++)
            {
                low = line[to].Y < line[low].Y ? to : low;
                high = line[to].Y > line[high].Y ? to : high;
            }

            kept.AddRange(new SortedSet<int> { from, low, high, to - 1 }.Select(i => line[i]));
            from = to;
        }

        return [.. kept];
    }
}
