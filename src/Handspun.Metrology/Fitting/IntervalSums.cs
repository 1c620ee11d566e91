using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Handspun.Metrology.Fitting;

/// <summary>Sums of products over the readings of one spline interval, added to the matrix when the interval is through.</summary>
/// <remarks>A row holds the four spline derivatives, the border's columns and the residual; a few lanes of padding let it be handled several numbers at a time.</remarks>
internal sealed class IntervalSums
{
    private readonly int _border;
    private readonly int _size;
    private readonly int _stride;
    private readonly double[] _sums;

    /// <summary>Sums for a border of such a size.</summary>
    public IntervalSums(int border)
    {
        _border = border;
        _size = 4 + border + 1;
        _stride = (_size + Vector<double>.Count - 1) / Vector<double>.Count * Vector<double>.Count;
        _sums = new double[_size * _stride];
        Row = new double[_stride];
    }

    /// <summary>Where the caller puts a row: spline 0 to 3, border from 4, residual last.</summary>
    public double[] Row { get; }

    /// <summary>Adds the products of <see cref="Row"/> with itself, so much weighted.</summary>
    public void Add(double weight)
    {
        // Both arrays are padded to whole vectors, so no lane is read or written outside them.
        ref var row = ref MemoryMarshal.GetArrayDataReference(Row);
        ref var sums = ref MemoryMarshal.GetArrayDataReference(_sums);
        for (var p = 0; p < _size; p++)
        {
            var scale = new Vector<double>(weight * Unsafe.Add(ref row, p));
            var at = p * _stride;
            for (var q = 0; q <= p; q += Vector<double>.Count)
            {
                var sum = Vector.FusedMultiplyAdd(
                    scale, Vector.LoadUnsafe(ref row, (nuint)q), Vector.LoadUnsafe(ref sums, (nuint)(at + q)));
                sum.StoreUnsafe(ref sums, (nuint)(at + q));
            }
        }
    }

    /// <summary>Adds the sums to the matrix and to both parts of the right-hand side, and starts anew.</summary>
    public void Flush(int first, BorderedBand matrix, double[] bandSide, double[] edgeSide)
    {
        for (var a = 0; a < 4; a++)
        {
            for (var b = 0; b <= a; b++)
            {
                matrix.Band[4 * (first + b) + a - b] += _sums[a * _stride + b];
            }
        }

        for (var p = 0; p < _border; p++)
        {
            var at = (4 + p) * _stride;
            for (var a = 0; a < 4; a++)
            {
                matrix.Border[(first + a) * _border + p] += _sums[at + a];
            }

            for (var q = 0; q <= p; q++)
            {
                matrix.Corner[p * _border + q] += _sums[at + 4 + q];
            }
        }

        var last = (_size - 1) * _stride;
        for (var a = 0; a < 4; a++)
        {
            bandSide[first + a] += _sums[last + a];
        }

        for (var p = 0; p < _border; p++)
        {
            edgeSide[p] += _sums[last + 4 + p];
        }

        Array.Clear(_sums);
    }
}
