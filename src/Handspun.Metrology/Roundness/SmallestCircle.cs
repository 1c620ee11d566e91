namespace Handspun.Metrology.Roundness;

/// <summary>The smallest circle around points: the farthest point is taken in until none is left outside, the radius growing each time.</summary>
internal static class SmallestCircle
{
    private const double Tolerance = 1e-14;

    /// <summary>The circle and the two or three points on which it rests.</summary>
    public static CentreSolution Around(PointCloud points)
    {
        var (x, y) = (points.X.ToArray(), points.Y.ToArray());
        int[] support = [0];
        var (cx, cy, radius) = (x[0], y[0], 0.0);
        while (true)
        {
            var (farthest, most) = (-1, radius + Tolerance);
            for (var i = 0; i < x.Length; i++)
            {
                var distance = Distance(i, cx, cy);
                (farthest, most) = distance > most ? (i, distance) : (farthest, most);
            }

            if (farthest < 0 || Grown([.. support, farthest]) is not { } next || next.Radius <= radius)
            {
                return new(cx, cy, radius, [.. support.Order()], []);
            }

            (cx, cy, radius, support) = next;
        }

        double Distance(int i, double ax, double ay) => Math.Sqrt((x[i] - ax) * (x[i] - ax) + (y[i] - ay) * (y[i] - ay));

        // The smallest circle around up to four points: of all on two or three of them that hold the rest, the smallest.
        (double X, double Y, double Radius, int[] Support)? Grown(int[] of)
        {
            (double X, double Y, double Radius, int[] Support)? best = null;
            for (var a = 0; a < of.Length; a++)
            {
                for (var b = a + 1; b < of.Length; b++)
                {
                    Try((x[of[a]] + x[of[b]]) / 2, (y[of[a]] + y[of[b]]) / 2, [of[a], of[b]]);
                    for (var c = b + 1; c < of.Length; c++)
                    {
                        var (ax, ay) = (x[of[b]] - x[of[a]], y[of[b]] - y[of[a]]);
                        var (bx, by) = (x[of[c]] - x[of[a]], y[of[c]] - y[of[a]]);
                        var (aa, bb, twice) = (ax * ax + ay * ay, bx * bx + by * by, 2 * (ax * by - ay * bx));
                        if (twice != 0)
                        {
                            Try(x[of[a]] + (by * aa - ay * bb) / twice, y[of[a]] + (ax * bb - bx * aa) / twice, [of[a], of[b], of[c]]);
                        }
                    }
                }
            }

            return best;

            void Try(double ax, double ay, int[] on)
            {
                var reach = on.Max(i => Distance(i, ax, ay));
                if (of.All(i => Distance(i, ax, ay) <= reach + Tolerance) && !(best?.Radius <= reach))
                {
                    best = (ax, ay, reach, on);
                }
            }
        }
    }
}
