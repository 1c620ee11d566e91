namespace Handspun.Metrology.Roundness;

/// <summary>The best centre of all for points in the plane: minimum zone, or largest circle inside.</summary>
/// <remarks>
/// Distances from a centre are not linear in it, so the goal has more than one valley. Each valley is gone down by a sequence
/// of linear programmes, which ends on its control points. That no other valley is lower is proved by branch and bound: for a
/// centre moved by v from c, with u the direction and ρ the distance of a point,
/// ρ + u·(−v) ≤ |p − c − v| ≤ ρ − u·v + v²/2ρ, (convexity; the mean of |p − c − v|² and ρ² over 2ρ), so one linear programme
/// over a square bounds the goal from below, within the square of its size.
/// </remarks>
internal sealed class CentreSearch(PointCloud points, CentreGoal goal)
{
    private const double Exact = 1e-13;         // of the mean radius: what rounding leaves
    private const double SmallestSquare = 1e-8;
    private const int MostSquares = 4000;
    private readonly double[] _ux = new double[points.Count];
    private readonly double[] _uy = new double[points.Count];
    private readonly double[] _distance = new double[points.Count];
    private readonly double[] _low = new double[points.Count];
    private CentreSolution _best = new(0, 0, double.PositiveInfinity, [], []);

    /// <summary>The best centre, proved so; null where there is none within reach, or the points are too far from a circle to prove it.</summary>
    public CentreSolution? Find(double startX, double startY)
    {
        const double reach = 30;
        var half = goal == CentreGoal.Zone ? reach : Math.Abs(startX) + Math.Abs(startY) + Extent();
        Descend(startX, startY);
        if (_best.Value < double.PositiveInfinity)
        {
            (startX, startY) = (_best.X, _best.Y);
        }

        PriorityQueue<(double X, double Y, double Half), double> squares = new();
        squares.Enqueue((startX, startY, half), double.NegativeInfinity);
        for (var looked = 0; squares.TryDequeue(out var square, out var bound) && bound < _best.Value - Exact; looked++)
        {
            if (looked > MostSquares || square.Half < SmallestSquare)
            {
                return null;
            }

            var third = square.Half / 3;
            for (var k = 0; k < 9; k++)
            {
                var (x, y) = (square.X + (k % 3 - 1) * 2 * third, square.Y + (k / 3 - 1) * 2 * third);
                var least = Bound(x, y, third);
                if (least < _best.Value - Exact)
                {
                    squares.Enqueue((x, y, third), least);
                }
            }
        }

        var farthest = Math.Max(Math.Abs(_best.X - startX), Math.Abs(_best.Y - startY));
        return _best.Value < double.PositiveInfinity && farthest < 0.9 * half ? _best : null;
    }

    private double Extent()
    {
        var extent = 0.0;
        for (var i = 0; i < points.Count; i++)
        {
            extent = Math.Max(extent, Math.Max(Math.Abs(points.X[i]), Math.Abs(points.Y[i])));
        }

        return extent;
    }

    private bool Allowed(double x, double y) => goal != CentreGoal.Inner || points.Outside(x, y) < 0;

    private double At(double x, double y)
    {
        points.From(x, y, _ux, _uy, _distance);
        var (nearest, farthest) = (double.PositiveInfinity, 0.0);
        foreach (var distance in _distance)
        {
            (nearest, farthest) = (Math.Min(nearest, distance), Math.Max(farthest, distance));
        }

        return goal == CentreGoal.Inner ? -nearest : farthest - nearest;
    }

    // Down the valley: linear programmes within a step that grows where they are right and shrinks where they are not.
    private void Descend(double x, double y)
    {
        if (!Allowed(x, y))
        {
            return;
        }

        var value = At(x, y);
        var step = 0.5;
        for (var i = 0; i < 200 && step > 1e-16; i++)
        {
            points.From(x, y, _ux, _uy, _distance);
            var next = new CentreProgram(_ux, _uy, _distance, _distance, goal, step, tie: 0).Solve();
            if (value < _best.Value || (value == _best.Value && Controls(next) > Controls(_best)))
            {
                _best = new(x, y, value, next.Outer, next.Inner);
            }

            var (dx, dy, moved) = Better(x, y, next, value, step);
            if (moved < value)
            {
                (x, y, value) = (x + dx, y + dy, moved);
                step = Math.Max(step, 2 * Math.Max(Math.Abs(dx), Math.Abs(dy)));
            }
            else if (goal == CentreGoal.Zone && next.Value > value - 1e-15)
            {
                return;
            }
            else
            {
                step /= 4;
            }
        }
    }

    private static int Controls(CentreSolution of) => of.Outer.Length + of.Inner.Length;

    // The programme's step; else, between two points across from each other, aside: both recede, which a linear programme cannot see.
    private (double X, double Y, double Value) Better(double x, double y, CentreSolution next, double value, double step)
    {
        var moved = Reach(next.X, next.Y);
        if (moved < value || goal != CentreGoal.Inner)
        {
            return (next.X, next.Y, moved);
        }

        points.From(x, y, _ux, _uy, _distance);
        var (ax, ay) = (-step * _uy[next.Inner[0]], step * _ux[next.Inner[0]]);
        var (one, other) = (Reach(ax, ay), Reach(-ax, -ay));
        return one <= other ? (ax, ay, one) : (-ax, -ay, other);

        double Reach(double dx, double dy) => Allowed(x + dx, y + dy) ? At(x + dx, y + dy) : double.PositiveInfinity;
    }

    private double Bound(double x, double y, double half)
    {
        var diagonal = half * Math.Sqrt(2);
        if (goal == CentreGoal.Inner && points.Outside(x, y) > diagonal)
        {
            return double.PositiveInfinity;
        }

        var here = At(x, y);
        if (here < _best.Value - Exact && Allowed(x, y))
        {
            Descend(x, y);
            here = At(x, y);
        }

        if (here - (goal == CentreGoal.Zone ? 2 : 1) * diagonal >= _best.Value - Exact)
        {
            return double.PositiveInfinity;   // no distance changes by more than the centre moves
        }

        for (var i = 0; i < _low.Length; i++)
        {
            var distance = _distance[i];
            if (distance > half)
            {
                _low[i] = distance + half * half / distance;
            }
            else
            {
                (_ux[i], _uy[i], _low[i], _distance[i]) = (0, 0, distance + diagonal, distance - diagonal);
            }
        }

        var least = new CentreProgram(_ux, _uy, _distance, _low, goal, half, tie: 0).Solve(enough: _best.Value);
        if (least.Value < _best.Value - Exact && Allowed(x + least.X, y + least.Y) && At(x + least.X, y + least.Y) < _best.Value - Exact)
        {
            Descend(x + least.X, y + least.Y);
        }

        return least.Value;
    }
}
