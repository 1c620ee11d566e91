namespace Handspun.Metrology.Fitting;

/// <summary>A symmetric positive definite matrix that is a narrow band with a dense border, and its Cholesky factor.</summary>
/// <remarks>
/// The band belongs to spline coefficients, of which only four meet at any reading; the border to the few unknowns that
/// meet every reading. Factor and solution take time in proportion to the length of the band.
/// </remarks>
internal sealed class BorderedBand(int length, int border)
{
    /// <summary>The diagonal and this many below it make the band.</summary>
    public const int Below = 3;

    private const int Wide = Below + 1;

    // Rows of the border's factor are padded to whole vectors; the padding stays zero.
    private readonly int _stride = PaddedRow.Length(border);
    private readonly double[] _factor = new double[length * Wide];
    private readonly double[] _edge = new double[length * PaddedRow.Length(border)];
    private readonly double[] _corner = new double[border * border];

    /// <summary>The band: element (j + d, j) at 4 j + d.</summary>
    public double[] Band { get; } = new double[length * Wide];

    /// <summary>The border: element (j, q) at border j + q.</summary>
    public double[] Border { get; } = new double[length * border];

    /// <summary>The corner, lower triangle: element (p, q) at border p + q.</summary>
    public double[] Corner { get; } = new double[border * border];

    /// <summary>Length of the band.</summary>
    public int Length => length;

    /// <summary>Size of the border.</summary>
    public int BorderSize => border;

    /// <summary>Natural logarithm of the determinant; after <see cref="TryFactor"/>.</summary>
    public double LogDeterminant { get; private set; }

    /// <summary>Sets every element to zero.</summary>
    public void Clear()
    {
        Array.Clear(Band);
        Array.Clear(Border);
        Array.Clear(Corner);
    }

    /// <summary>Factors the matrix with its diagonal stretched by 1 + <paramref name="damping"/>; false where it is not positive definite.</summary>
    public bool TryFactor(double damping)
    {
        LogDeterminant = 0;
        var product = 1.0;
        for (var j = 0; j < length; j++)
        {
            for (var d = 0; d < Wide && j + d < length; d++)
            {
                var sum = Band[j * Wide + d] * (d == 0 ? 1 + damping : 1);
                for (var k = Math.Max(0, j + d - Below); k < j; k++)
                {
                    sum -= _factor[k * Wide + j - k] * _factor[k * Wide + j + d - k];
                }

                if (d == 0 && !(sum > 0))
                {
                    return false;
                }

                _factor[j * Wide + d] = d == 0 ? Math.Sqrt(sum) : sum / _factor[j * Wide];
            }

            // One logarithm for many factors, taken before they leave the range of numbers.
            product *= _factor[j * Wide];
            if (product is < 1e-100 or > 1e100)
            {
                LogDeterminant += 2 * Math.Log(product);
                product = 1;
            }

            ForwardEdge(j);
        }

        LogDeterminant += 2 * Math.Log(product);
        return TryFactorCorner(damping);
    }

    /// <summary>Solves for one right-hand side, in place; after <see cref="TryFactor"/>.</summary>
    public void Solve(Span<double> band, Span<double> edge)
    {
        var padded = new double[_stride];
        edge.CopyTo(padded);
        for (var j = 0; j < length; j++)
        {
            for (var k = Math.Max(0, j - Below); k < j; k++)
            {
                band[j] -= _factor[k * Wide + j - k] * band[k];
            }

            band[j] /= _factor[j * Wide];
            PaddedRow.AddScaled(padded, _edge.AsSpan(j * _stride, _stride), -band[j]);
        }

        padded.AsSpan(0, border).CopyTo(edge);
        SolveCorner(edge);
        edge.CopyTo(padded);
        for (var j = length - 1; j >= 0; j--)
        {
            band[j] -= PaddedRow.Dot(_edge.AsSpan(j * _stride, _stride), padded);

            for (var d = 1; d < Wide && j + d < length; d++)
            {
                band[j] -= _factor[j * Wide + d] * band[j + d];
            }

            band[j] /= _factor[j * Wide];
        }
    }

    /// <summary>The border's part of the inverse, full square; after <see cref="TryFactor"/>.</summary>
    public double[] InverseCorner()
    {
        var inverse = new double[border * border];
        for (var q = 0; q < border; q++)
        {
            var column = inverse.AsSpan(q * border, border);
            column[q] = 1;
            SolveCorner(column);
        }

        return inverse;
    }

    /// <summary>The band's part of the inverse, laid out as <see cref="Band"/> (Takahashi's recursion, then the border's share); after <see cref="TryFactor"/>.</summary>
    public double[] InverseBand()
    {
        var inverse = new double[length * Wide];
        var weights = InverseTimesBorder();
        var padded = Padded(InverseCorner());
        for (var j = length - 1; j >= 0; j--)
        {
            for (var i = Math.Min(j + Below, length - 1); i >= j; i--)
            {
                var sum = i == j ? 1 / _factor[j * Wide] : 0;
                for (var k = j + 1; k <= j + Below && k < length; k++)
                {
                    sum -= _factor[j * Wide + k - j] * inverse[Math.Min(i, k) * Wide + Math.Abs(i - k)];
                }

                inverse[j * Wide + i - j] = sum / _factor[j * Wide];
            }
        }

        var product = new double[_stride];
        for (var j = 0; j < length; j++)
        {
            Array.Clear(product);
            var row = weights.AsSpan(j * _stride, _stride);
            for (var q = 0; q < border; q++)
            {
                PaddedRow.AddScaled(product, padded.AsSpan(q * _stride, _stride), row[q]);
            }

            for (var d = 0; d < Wide && j + d < length; d++)
            {
                inverse[j * Wide + d] += PaddedRow.Dot(product, weights.AsSpan((j + d) * _stride, _stride));
            }
        }

        return inverse;
    }

    private void ForwardEdge(int j)
    {
        var row = _edge.AsSpan(j * _stride, _stride);
        Border.AsSpan(j * border, border).CopyTo(row);
        for (var k = Math.Max(0, j - Below); k < j; k++)
        {
            PaddedRow.AddScaled(row, _edge.AsSpan(k * _stride, _stride), -_factor[k * Wide + j - k]);
        }

        PaddedRow.Scale(row, 1 / _factor[j * Wide]);
    }

    private double[] InverseTimesBorder()
    {
        var weights = (double[])_edge.Clone();
        for (var j = length - 1; j >= 0; j--)
        {
            var row = weights.AsSpan(j * _stride, _stride);
            for (var d = 1; d < Wide && j + d < length; d++)
            {
                PaddedRow.AddScaled(row, weights.AsSpan((j + d) * _stride, _stride), -_factor[j * Wide + d]);
            }

            PaddedRow.Scale(row, 1 / _factor[j * Wide]);
        }

        return weights;
    }

    private bool TryFactorCorner(double damping)
    {
        var squares = new double[border * _stride];
        for (var j = 0; j < length; j++)
        {
            var row = _edge.AsSpan(j * _stride, _stride);
            for (var p = 0; p < border; p++)
            {
                var half = PaddedRow.Length(p + 1);   // the lower triangle is all that is used
                PaddedRow.AddScaled(squares.AsSpan(p * _stride, half), row, row[p]);
            }
        }

        for (var p = 0; p < border; p++)
        {
            for (var q = 0; q <= p; q++)
            {
                _corner[p * border + q] = Corner[p * border + q] * (p == q ? 1 + damping : 1) - squares[p * _stride + q];
            }
        }

        for (var q = 0; q < border; q++)
        {
            for (var p = q; p < border; p++)
            {
                var sum = _corner[p * border + q];
                for (var k = 0; k < q; k++)
                {
                    sum -= _corner[p * border + k] * _corner[q * border + k];
                }

                if (p == q && !(sum > 0))
                {
                    return false;
                }

                _corner[p * border + q] = p == q ? Math.Sqrt(sum) : sum / _corner[q * border + q];
            }

            LogDeterminant += 2 * Math.Log(_corner[q * border + q]);
        }

        return true;
    }

    private void SolveCorner(Span<double> edge)
    {
        for (var p = 0; p < border; p++)
        {
            for (var k = 0; k < p; k++)
            {
                edge[p] -= _corner[p * border + k] * edge[k];
            }

            edge[p] /= _corner[p * border + p];
        }

        for (var p = border - 1; p >= 0; p--)
        {
            for (var k = p + 1; k < border; k++)
            {
                edge[p] -= _corner[k * border + p] * edge[k];
            }

            edge[p] /= _corner[p * border + p];
        }
    }

    private double[] Padded(double[] corner)
    {
        var padded = new double[border * _stride];
        for (var p = 0; p < border; p++)
        {
            corner.AsSpan(p * border, border).CopyTo(padded.AsSpan(p * _stride));
        }

        return padded;
    }
}
