namespace Handspun.Metrology.Roundness;

/// <summary>The points of a profile, moved to their middle and scaled to a mean distance of one from it, so that one set of tolerances serves all.</summary>
internal sealed class PointCloud
{
    private readonly double[] _x;
    private readonly double[] _y;
    private readonly (double X, double Y, double Nx, double Ny)[] _sides;

    private PointCloud(double[] x, double[] y, double middleX, double middleY, double scale)
    {
        (_x, _y, MiddleX, MiddleY, Scale) = (x, y, middleX, middleY, scale);
        _sides = Hull(x, y);
    }

    public double MiddleX { get; }

    public double MiddleY { get; }

    /// <summary>Millimetres in one unit.</summary>
    public double Scale { get; }

    public ReadOnlySpan<double> X => _x;

    public ReadOnlySpan<double> Y => _y;

    public int Count => _x.Length;

    /// <summary>The points; null where they are all at one place or in one line.</summary>
    public static PointCloud? Of(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        var (middleX, middleY, scale) = (Mean(x), Mean(y), 0.0);
        var (px, py) = (new double[x.Length], new double[x.Length]);
        for (var i = 0; i < x.Length; i++)
        {
            (px[i], py[i]) = (x[i] - middleX, y[i] - middleY);
            scale += Math.Sqrt(px[i] * px[i] + py[i] * py[i]) / x.Length;
        }

        if (!(scale > 0 && double.IsFinite(scale)))
        {
            return null;
        }

        var (xx, yy, xy) = (0.0, 0.0, 0.0);
        for (var i = 0; i < px.Length; i++)
        {
            (px[i], py[i]) = (px[i] / scale, py[i] / scale);
            (xx, yy, xy) = (xx + px[i] * px[i], yy + py[i] * py[i], xy + px[i] * py[i]);
        }

        // The smaller of the two principal moments, as a share of the whole: the square of the height of the arc over its length.
        var spread = (xx * yy - xy * xy) / ((xx + yy) * (xx + yy));
        return spread > 1e-14 ? new(px, py, middleX, middleY, scale) : null;
    }

    /// <summary>Directions and distances of the points from a centre.</summary>
    public void From(double cx, double cy, Span<double> ux, Span<double> uy, Span<double> distance)
    {
        for (var i = 0; i < _x.Length; i++)
        {
            var (dx, dy) = (_x[i] - cx, _y[i] - cy);
            var d = Math.Sqrt(dx * dx + dy * dy);
            (distance[i], ux[i], uy[i]) = d > 0 ? (d, dx / d, dy / d) : (0, 0, 0);
        }
    }

    /// <summary>How far a place is outside the outermost points; negative inside.</summary>
    public double Outside(double x, double y)
    {
        var most = double.NegativeInfinity;
        foreach (var side in _sides)
        {
            most = Math.Max(most, (x - side.X) * side.Nx + (y - side.Y) * side.Ny);
        }

        return most;
    }

    private static double Mean(ReadOnlySpan<double> values)
    {
        var mean = 0.0;
        foreach (var value in values)
        {
            mean += value / values.Length;
        }

        return mean;
    }

    // The convex hull (Andrew's monotone chain, 1979), as sides with outward normals.
    private static (double X, double Y, double Nx, double Ny)[] Hull(double[] x, double[] y)
    {
        int[] order = [.. Enumerable.Range(0, x.Length).OrderBy(i => x[i]).ThenBy(i => y[i])];
        List<int> hull = [];
        foreach (var run in new[] { order, [.. order.Reverse()] })
        {
            var start = hull.Count;
            foreach (var i in run)
            {
                while (hull.Count >= start + 2 && Turn(hull[^2], hull[^1], i) <= 0)
                {
                    hull.RemoveAt(hull.Count - 1);
                }

                hull.Add(i);
            }

            hull.RemoveAt(hull.Count - 1);
        }

        return [.. hull.Select((i, k) =>
        {
            var next = hull[(k + 1) % hull.Count];
            var (dx, dy) = (x[next] - x[i], y[next] - y[i]);
            var length = Math.Sqrt(dx * dx + dy * dy);
            return (x[i], y[i], dy / length, -dx / length);
        })];

        double Turn(int a, int b, int c) => (x[b] - x[a]) * (y[c] - y[a]) - (y[b] - y[a]) * (x[c] - x[a]);
    }
}
