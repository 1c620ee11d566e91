using System.Numerics;

namespace Handspun.Metrology.Fitting;

/// <summary>Rows of numbers handled several at a time; each is padded with zeros to whole vectors.</summary>
internal static class PaddedRow
{
    /// <summary>The length of a row that holds so many numbers.</summary>
    public static int Length(int numbers) => (numbers + Vector<double>.Count - 1) / Vector<double>.Count * Vector<double>.Count;

    /// <summary>Adds a row, so much scaled, to a sum.</summary>
    public static void AddScaled(Span<double> sum, ReadOnlySpan<double> row, double scale)
    {
        var factor = new Vector<double>(scale);
        for (var q = 0; q <= sum.Length - Vector<double>.Count; q += Vector<double>.Count)
        {
            Vector.FusedMultiplyAdd(factor, new Vector<double>(row[q..]), new Vector<double>(sum[q..])).CopyTo(sum[q..]);
        }
    }

    /// <summary>Multiplies a row in place.</summary>
    public static void Scale(Span<double> row, double scale)
    {
        for (var q = 0; q <= row.Length - Vector<double>.Count; q += Vector<double>.Count)
        {
            (new Vector<double>(row[q..]) * scale).CopyTo(row[q..]);
        }
    }

    /// <summary>The sum of the products of two rows.</summary>
    public static double Dot(ReadOnlySpan<double> one, ReadOnlySpan<double> other)
    {
        var sum = Vector<double>.Zero;
        for (var q = 0; q <= one.Length - Vector<double>.Count; q += Vector<double>.Count)
        {
            sum = Vector.FusedMultiplyAdd(new Vector<double>(one[q..]), new Vector<double>(other[q..]), sum);
        }

        return Vector.Sum(sum);
    }
}
