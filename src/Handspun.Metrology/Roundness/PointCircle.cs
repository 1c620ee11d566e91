using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Roundness;

/// <summary>Which of the four reference circles.</summary>
internal enum CircleKind
{
    LeastSquares,
    Zone,
    Circumscribed,
    Inscribed,
}

/// <summary>A found centre made into a reference circle in millimetres.</summary>
internal static class PointCircle
{
    /// <summary>The circle of points about a centre.</summary>
    public static ReferenceCircle Of(PointCloud points, CentreSolution centre, CircleKind kind)
    {
        var (ux, uy, distance) = (new double[points.Count], new double[points.Count], new double[points.Count]);
        points.From(centre.X, centre.Y, ux, uy, distance);
        var (high, low) = (Extreme(distance, 1), Extreme(distance, -1));
        var radius = Radius(distance, high, low, kind);
        var scale = points.Scale;
        return new(
            Length.FromMillimetres(points.MiddleX + scale * centre.X),
            Length.FromMillimetres(points.MiddleY + scale * centre.Y),
            Length.FromMillimetres(scale * radius),
            Length.FromMillimetres(scale * Math.Max(0, distance[high] - radius)),
            Length.FromMillimetres(scale * Math.Max(0, radius - distance[low])))
        {
            Outer = Controls(Outer(kind, centre, high)),
            Inner = Controls(Inner(kind, centre, low)),
        };

        ControlPoint[] Controls(int[] indices) =>
            Array.ConvertAll(indices, i => new ControlPoint(i, Angle.FromDegrees(Math.Atan2(uy[i], ux[i]) * 180 / Math.PI)));
    }

    /// <summary>The points on the outside that hold a kind of circle.</summary>
    public static int[] Outer(CircleKind kind, CentreSolution centre, int high) => kind switch
    {
        CircleKind.LeastSquares => [high],
        CircleKind.Inscribed => [],
        _ => centre.Outer,
    };

    /// <summary>The points on the inside that hold a kind of circle.</summary>
    public static int[] Inner(CircleKind kind, CentreSolution centre, int low) => kind switch
    {
        CircleKind.LeastSquares => [low],
        CircleKind.Circumscribed => [],
        _ => centre.Inner,
    };

    /// <summary>The radius that a kind of circle has over heights from its centre.</summary>
    public static double Radius(ReadOnlySpan<double> heights, int high, int low, CircleKind kind)
    {
        var mean = 0.0;
        foreach (var height in heights)
        {
            mean += height / heights.Length;
        }

        return kind switch
        {
            CircleKind.LeastSquares => mean,
            CircleKind.Zone => (heights[high] + heights[low]) / 2,
            CircleKind.Circumscribed => heights[high],
            _ => heights[low],
        };
    }

    /// <summary>The place of the highest (sign 1) or lowest (sign −1) value.</summary>
    public static int Extreme(ReadOnlySpan<double> values, int sign)
    {
        var at = 0;
        for (var i = 1; i < values.Length; i++)
        {
            at = sign * values[i] > sign * values[at] ? i : at;
        }

        return at;
    }
}
