namespace Handspun.Metrology.Tests.Roundness;

/// <summary>The minimum zone of a few points by trying every centre at which four of them are held.</summary>
internal static class EveryCentre
{
    /// <summary>The least zone; a centre is level with two pairs of points, or with three points.</summary>
    public static double LeastZone(double[] x, double[] y)
    {
        var pairs = Enumerable.Range(0, x.Length).SelectMany(a => Enumerable.Range(a + 1, x.Length - a - 1).Select(b => (A: a, B: b))).ToArray();
        return pairs.SelectMany(p => pairs.Select(q => Level(p, q))).Where(c => double.IsFinite(c.X + c.Y)).Min(Zone);

        // 2 (b − a)·c = |b|² − |a|² for both pairs.
        (double X, double Y) Level((int A, int B) p, (int A, int B) q)
        {
            var (px, py, pz) = Line(p);
            var (qx, qy, qz) = Line(q);
            var determinant = px * qy - py * qx;
            return ((pz * qy - py * qz) / determinant, (px * qz - pz * qx) / determinant);
        }

        (double X, double Y, double Z) Line((int A, int B) p) => (
            2 * (x[p.B] - x[p.A]),
            2 * (y[p.B] - y[p.A]),
            x[p.B] * x[p.B] + y[p.B] * y[p.B] - x[p.A] * x[p.A] - y[p.A] * y[p.A]);

        double Zone((double X, double Y) c)
        {
            double[] distances = [.. x.Zip(y, (a, b) => Math.Sqrt((a - c.X) * (a - c.X) + (b - c.Y) * (b - c.Y)))];
            return distances.Max() - distances.Min();
        }
    }
}
