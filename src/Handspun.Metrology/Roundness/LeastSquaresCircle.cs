namespace Handspun.Metrology.Roundness;

/// <summary>The circle with the least sum of squared distances from points.</summary>
internal static class LeastSquaresCircle
{
    /// <summary>Centre and radius; null where no circle is best, only ever larger ones.</summary>
    /// <remarks>From the algebraic circle (Kåsa 1976), by the method of Levenberg and Marquardt on the distances (Gander, Golub, Strebel 1994).</remarks>
    public static (double X, double Y, double Radius)? Through(PointCloud points)
    {
        var (x, y) = Algebraic(points);
        var sum = Normal(points, x, y, out var radius, out var n);
        var damping = 1e-3;
        for (var i = 0; i < 2000; i++)
        {
            var (dx, dy) = Step(n, damping);
            if (!double.IsFinite(dx + dy))
            {
                return null;
            }

            var next = Normal(points, x + dx, y + dy, out var nextRadius, out var nextN);
            var small = Math.Abs(dx) + Math.Abs(dy) < 1e-15 * (1 + radius);
            if (next <= sum)
            {
                (x, y, sum, radius, n) = (x + dx, y + dy, next, nextRadius, nextN);
                damping /= 10;
            }
            else
            {
                damping = Math.Max(damping, 1e-12) * 10;
            }

            if (small || damping > 1e12)
            {
                break;
            }
        }

        // The sum is flat at its least, where it no longer tells steps apart; the steps themselves do, as long as they shrink.
        var last = 1e-4;
        for (var i = 0; i < 100; i++)
        {
            var (dx, dy) = Step(n, damping: 0);
            var size = Math.Abs(dx) + Math.Abs(dy);
            if (!(size < last))
            {
                break;
            }

            (x, y, last) = (x + dx, y + dy, size);
            Normal(points, x, y, out radius, out n);
        }

        return radius < 1e6 ? (x, y, radius) : null;
    }

    private static (double X, double Y) Step((double Xx, double Yy, double Xy, double X, double Y) n, double damping)
    {
        var (xx, yy) = (n.Xx * (1 + damping), n.Yy * (1 + damping));
        var determinant = xx * yy - n.Xy * n.Xy;
        return ((yy * n.X - n.Xy * n.Y) / determinant, (xx * n.Y - n.Xy * n.X) / determinant);
    }

    // |p|² + a x + b y + c = 0 in the least-squares sense; the points' mean is at the origin.
    private static (double X, double Y) Algebraic(PointCloud points)
    {
        var (xx, yy, xy, xz, yz) = (0.0, 0.0, 0.0, 0.0, 0.0);
        for (var i = 0; i < points.Count; i++)
        {
            var (x, y) = (points.X[i], points.Y[i]);
            var z = x * x + y * y;
            (xx, yy, xy, xz, yz) = (xx + x * x, yy + y * y, xy + x * y, xz + x * z, yz + y * z);
        }

        var twice = 2 * (xx * yy - xy * xy);
        return ((yy * xz - xy * yz) / twice, (xx * yz - xy * xz) / twice);
    }

    // The sum of squares about a centre with its best radius, and the normal equations of a step of the centre.
    private static double Normal(PointCloud points, double x, double y, out double radius, out (double Xx, double Yy, double Xy, double X, double Y) n)
    {
        var (ux, uy, distance) = (new double[points.Count], new double[points.Count], new double[points.Count]);
        points.From(x, y, ux, uy, distance);
        var (mx, my) = (ux.Average(), uy.Average());
        radius = distance.Average();
        n = default;
        var sum = 0.0;
        for (var i = 0; i < points.Count; i++)
        {
            var (ax, ay, r) = (ux[i] - mx, uy[i] - my, distance[i] - radius);
            sum += r * r;
            n = (n.Xx + ax * ax, n.Yy + ay * ay, n.Xy + ax * ay, n.X + ax * r, n.Y + ay * r);
        }

        return sum;
    }
}
