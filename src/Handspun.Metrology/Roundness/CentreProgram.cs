namespace Handspun.Metrology.Roundness;

/// <summary>Which of the two radii a centre is sought for.</summary>
internal enum CentreGoal
{
    /// <summary>Least difference of the outer and the inner radius.</summary>
    Zone,

    /// <summary>Least outer radius.</summary>
    Outer,

    /// <summary>Greatest inner radius.</summary>
    Inner,
}

/// <summary>What a programme found.</summary>
/// <param name="X">Centre toward 0 degrees.</param>
/// <param name="Y">Centre toward 90 degrees.</param>
/// <param name="Value">Outer less inner radius, the outer one, or less the inner one (with a billionth of the other); a bound from below in any case.</param>
/// <param name="Outer">Points that hold the outer circle.</param>
/// <param name="Inner">Points that hold the inner circle.</param>
internal readonly record struct CentreSolution(double X, double Y, double Value, int[] Outer, int[] Inner);

/// <summary>The linear Chebyshev problem of a centre: heights fall by the centre's move along each direction.</summary>
/// <remarks>
/// Minimise R − r with R ≥ high − u·d and r ≤ low − u·d for every direction u, and |d| within a square. Where one radius alone is
/// the goal, the other counts a billionth, so that of centres that are equally good (two points across from each other leave the
/// centre free) the one with the narrowest zone is taken. Solved by the dual simplex method, which is an exchange of four control
/// points: each exchange takes in the point that sticks out most, and the value only grows, so that it is a bound from below at any time.
/// </remarks>
internal ref struct CentreProgram
{
    private const int Size = 4;
    private const double Tolerance = 2e-15;
    private readonly ReadOnlySpan<double> _ux, _uy, _high, _low;
    private readonly double _half, _outerWeight, _innerWeight;
    private readonly int _count;

    /// <summary>A problem over directions (unit vectors, or zero where the height does not depend on the centre) and heights of the order of one.</summary>
    /// <param name="ux">Directions toward 0 degrees.</param>
    /// <param name="uy">Directions toward 90 degrees.</param>
    /// <param name="high">What the outer radius must reach.</param>
    /// <param name="low">What the inner radius must not pass.</param>
    /// <param name="goal">Which radius counts.</param>
    /// <param name="half">Half the side of the square in which the centre may move.</param>
    /// <param name="tie">How much the radius counts that is not the goal; 0 for not at all.</param>
    public CentreProgram(
        ReadOnlySpan<double> ux, ReadOnlySpan<double> uy, ReadOnlySpan<double> high, ReadOnlySpan<double> low, CentreGoal goal, double half, double tie = 1e-9)
    {
        _ux = ux;
        _uy = uy;
        _high = high;
        _low = low;
        _outerWeight = goal == CentreGoal.Inner ? tie : 1;
        _innerWeight = goal == CentreGoal.Outer ? tie : 1;
        _half = half;
        _count = ux.Length;
    }

    private readonly int Box => 2 * _count;

    /// <summary>Exchanges until no point sticks out, or until the value reaches the level at which the answer no longer matters.</summary>
    public readonly CentreSolution Solve(double enough = double.PositiveInfinity)
    {
        Span<int> basis = stackalloc int[Size];
        Span<double> inverse = stackalloc double[Size * Size];
        Span<double> x = stackalloc double[Size];
        Span<double> weights = stackalloc double[Size];
        Span<double> exchange = stackalloc double[Size];
        Start(basis);
        var value = double.NegativeInfinity;
        var most = 40 + 4 * _count;
        for (var round = 0; round < most && Invert(basis, inverse); round++)
        {
            Vertex(basis, inverse, x);
            value = Math.Max(value, _outerWeight * x[2] - _innerWeight * x[3]);
            var entering = value < enough ? Worst(x, basis, firstOnly: round > most / 2) : -1;
            if (entering < 0)
            {
                break;
            }

            Weights(inverse, 0, 0, _outerWeight, -_innerWeight, weights);
            var (a0, a1, a2, a3, _) = Row(entering);
            Weights(inverse, a0, a1, a2, a3, exchange);
            var leaving = -1;
            var least = double.PositiveInfinity;
            for (var j = 0; j < Size; j++)
            {
                var ratio = exchange[j] > 1e-13 ? Math.Max(0, weights[j]) / exchange[j] : double.PositiveInfinity;
                if (ratio < least || (ratio == least && leaving >= 0 && basis[j] < basis[leaving]))
                {
                    (least, leaving) = (ratio, j);
                }
            }

            if (leaving < 0)
            {
                break;
            }

            basis[leaving] = entering;
        }

        return new(x[0], x[1], value, Points(basis, 0), Points(basis, _count));
    }

    // One point outside, one inside, and the two sides of the square toward which they would move the centre.
    private readonly void Start(Span<int> basis)
    {
        var (outer, inner) = (0, 0);
        for (var k = 1; k < _count; k++)
        {
            outer = _high[k] > _high[outer] ? k : outer;
            inner = _low[k] < _low[inner] ? k : inner;
        }

        var px = _outerWeight * _ux[outer] - _innerWeight * _ux[inner];
        var py = _outerWeight * _uy[outer] - _innerWeight * _uy[inner];
        basis[0] = px <= 0 ? Box : Box + 1;
        basis[1] = py <= 0 ? Box + 2 : Box + 3;
        (basis[2], basis[3]) = (outer, _count + inner);
    }

    // A row a·(dx, dy, R, r) ≥ b.
    private readonly (double A0, double A1, double A2, double A3, double B) Row(int row) =>
        row < _count ? (_ux[row], _uy[row], 1, 0, _high[row])
        : row < Box ? (-_ux[row - _count], -_uy[row - _count], 0, -1, -_low[row - _count])
        : (row - Box) switch
        {
            0 => (1, 0, 0, 0, -_half),
            1 => (-1, 0, 0, 0, -_half),
            2 => (0, 1, 0, 0, -_half),
            _ => (0, -1, 0, 0, -_half),
        };

    private readonly int Worst(ReadOnlySpan<double> x, ReadOnlySpan<int> basis, bool firstOnly)
    {
        var (worst, by) = (-1, Tolerance);
        var (dx, dy, outer, inner) = (x[0], x[1], x[2], x[3]);
        for (var k = 0; k < _count; k++)
        {
            var move = _ux[k] * dx + _uy[k] * dy;
            var above = _outerWeight == 0 ? 0 : _high[k] - move - outer;
            var below = _innerWeight == 0 ? 0 : inner - _low[k] + move;
            var (row, over) = above > below ? (k, above) : (_count + k, below);
            if (over > by && !basis.Contains(row))
            {
                (worst, by) = (row, over);
                if (firstOnly)
                {
                    return worst;   // the smallest index cannot go round in circles (Bland 1977)
                }
            }
        }

        for (var side = 0; side < 4; side++)
        {
            var beyond = side switch { 0 => -dx, 1 => dx, 2 => -dy, _ => dy } - _half;
            if (beyond > by && !basis.Contains(Box + side))
            {
                (worst, by) = (Box + side, beyond);
            }
        }

        return worst;
    }

    private readonly bool Invert(ReadOnlySpan<int> basis, Span<double> inverse)
    {
        Span<double> m = stackalloc double[Size * Size];
        inverse.Clear();
        for (var i = 0; i < Size; i++)
        {
            (m[4 * i], m[4 * i + 1], m[4 * i + 2], m[4 * i + 3], _) = Row(basis[i]);
            inverse[5 * i] = 1;
        }

        for (var column = 0; column < Size; column++)
        {
            var pivot = column;
            for (var i = column + 1; i < Size; i++)
            {
                pivot = Math.Abs(m[4 * i + column]) > Math.Abs(m[4 * pivot + column]) ? i : pivot;
            }

            if (Math.Abs(m[4 * pivot + column]) < 1e-14)
            {
                return false;
            }

            for (var j = 0; j < Size; j++)
            {
                (m[4 * column + j], m[4 * pivot + j]) = (m[4 * pivot + j], m[4 * column + j]);
                (inverse[4 * column + j], inverse[4 * pivot + j]) = (inverse[4 * pivot + j], inverse[4 * column + j]);
            }

            var scale = 1 / m[5 * column];
            for (var j = 0; j < Size; j++)
            {
                m[4 * column + j] *= scale;
                inverse[4 * column + j] *= scale;
            }

            for (var i = 0; i < Size; i++)
            {
                var factor = i == column ? 0 : m[4 * i + column];
                for (var j = 0; j < Size && factor != 0; j++)
                {
                    m[4 * i + j] -= factor * m[4 * column + j];
                    inverse[4 * i + j] -= factor * inverse[4 * column + j];
                }
            }
        }

        return true;
    }

    private readonly void Vertex(ReadOnlySpan<int> basis, ReadOnlySpan<double> inverse, Span<double> x)
    {
        x.Clear();
        for (var j = 0; j < Size; j++)
        {
            var b = Row(basis[j]).B;
            for (var i = 0; i < Size; i++)
            {
                x[i] += inverse[4 * i + j] * b;
            }
        }
    }

    private static void Weights(ReadOnlySpan<double> inverse, double c0, double c1, double c2, double c3, Span<double> weights)
    {
        for (var j = 0; j < Size; j++)
        {
            weights[j] = c0 * inverse[j] + c1 * inverse[4 + j] + c2 * inverse[8 + j] + c3 * inverse[12 + j];
        }
    }

    private readonly int[] Points(ReadOnlySpan<int> basis, int from)
    {
        List<int> points = [];
        foreach (var row in basis)
        {
            if (row >= from && row < from + _count)
            {
                points.Add(row - from);
            }
        }

        points.Sort();
        return [.. points];
    }
}
