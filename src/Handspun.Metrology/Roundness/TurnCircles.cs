using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Roundness;

/// <summary>The reference circles of deviations by angle, in the limaçon approximation.</summary>
internal sealed class TurnCircles
{
    private readonly double[] _degrees, _cosine, _sine, _height;
    private readonly double _middle, _scale;

    /// <summary>A profile of finite values that goes all the way round.</summary>
    public TurnCircles(ReadOnlySpan<double> degrees, ReadOnlySpan<double> millimetres)
    {
        _degrees = degrees.ToArray();
        _cosine = Array.ConvertAll(_degrees, a => Math.Cos(a * Math.PI / 180));
        _sine = Array.ConvertAll(_degrees, a => Math.Sin(a * Math.PI / 180));
        var (high, low) = (PointCircle.Extreme(millimetres, 1), PointCircle.Extreme(millimetres, -1));
        _middle = (millimetres[high] + millimetres[low]) / 2;
        _scale = millimetres[high] > millimetres[low] ? (millimetres[high] - millimetres[low]) / 2 : 1;
        _height = Array.ConvertAll(millimetres.ToArray(), height => (height - _middle) / _scale);
    }

    /// <summary>The widest stretch of the turn without a value, in degrees.</summary>
    public static double WidestGap(ReadOnlySpan<double> degrees)
    {
        double[] sorted = [.. degrees.ToArray().Select(a => a - 360 * Math.Floor(a / 360)).Order()];
        var widest = 360 + sorted[0] - sorted[^1];
        for (var i = 1; i < sorted.Length; i++)
        {
            widest = Math.Max(widest, sorted[i] - sorted[i - 1]);
        }

        return widest;
    }

    /// <summary>All four circles.</summary>
    /// <param name="indexed">Whether a control point's place in the list means anything to the caller.</param>
    /// <param name="leastSquares">The least-squares centre and level, where the caller knows them better; in millimetres.</param>
    public RoundnessResult Result(bool indexed, (double X, double Y, double Level)? leastSquares = null)
    {
        var (x, y, level) = leastSquares ?? LeastSquares();
        return new()
        {
            Status = RoundnessStatus.Measured,
            LeastSquares = Circle(new(x / _scale, y / _scale, 0, [], []), CircleKind.LeastSquares, indexed, (level - _middle) / _scale),
            MinimumZone = Circle(Solve(CentreGoal.Zone), CircleKind.Zone, indexed),
            MinimumCircumscribed = Circle(Solve(CentreGoal.Outer), CircleKind.Circumscribed, indexed),
            MaximumInscribed = Circle(Solve(CentreGoal.Inner), CircleKind.Inscribed, indexed),
        };
    }

    private CentreSolution Solve(CentreGoal goal)
    {
        const double anywhere = 1e9;   // the profile goes all the way round, so no goal gains by running away
        return new CentreProgram(_cosine, _sine, _height, _height, goal, anywhere).Solve();
    }

    private ReferenceCircle Circle(CentreSolution centre, CircleKind kind, bool indexed, double? level = null)
    {
        var heights = new double[_height.Length];
        for (var i = 0; i < heights.Length; i++)
        {
            heights[i] = _height[i] - _cosine[i] * centre.X - _sine[i] * centre.Y;
        }

        var (high, low) = (PointCircle.Extreme(heights, 1), PointCircle.Extreme(heights, -1));
        var radius = level ?? PointCircle.Radius(heights, high, low, kind);
        return new(
            Length.FromMillimetres(_scale * centre.X),
            Length.FromMillimetres(_scale * centre.Y),
            Length.FromMillimetres(_middle + _scale * radius),
            Length.FromMillimetres(_scale * Math.Max(0, heights[high] - radius)),
            Length.FromMillimetres(_scale * Math.Max(0, radius - heights[low])))
        {
            Outer = Controls(PointCircle.Outer(kind, centre, high)),
            Inner = Controls(PointCircle.Inner(kind, centre, low)),
        };

        ControlPoint[] Controls(int[] indices) =>
            Array.ConvertAll(indices, i => new ControlPoint(indexed ? i : null, Angle.FromDegrees(_degrees[i])));
    }

    // Normal equations of level, cosine and sine; three unknowns of the order of one, so elimination by Cramer's rule will do.
    private (double X, double Y, double Level) LeastSquares()
    {
        var n = (double)_height.Length;
        var (c, s, h) = (_cosine.Average(), _sine.Average(), _height.Average());
        var (cc, ss, cs, ch, sh) = (0.0, 0.0, 0.0, 0.0, 0.0);
        for (var i = 0; i < _height.Length; i++)
        {
            var (ac, @as, ah) = (_cosine[i] - c, _sine[i] - s, _height[i] - h);
            (cc, ss, cs, ch, sh) = (cc + ac * ac / n, ss + @as * @as / n, cs + ac * @as / n, ch + ac * ah / n, sh + @as * ah / n);
        }

        var determinant = cc * ss - cs * cs;
        var (x, y) = ((ss * ch - cs * sh) / determinant, (cc * sh - cs * ch) / determinant);
        return (_scale * x, _scale * y, _middle + _scale * (h - c * x - s * y));
    }
}
