using System.Numerics;

namespace Handspun.Metrology.Fitting;

/// <summary>One reading's row of the design: the profile's waves and the drift.</summary>
internal static class FourierRow
{
    /// <summary>Fills the row, and gives the height and its slope per turn.</summary>
    /// <param name="sine">Sine of the angle.</param>
    /// <param name="cosine">Cosine of the angle.</param>
    /// <param name="course">Time from −1 to 1, for the drift.</param>
    /// <param name="harmonics">Waves.</param>
    /// <param name="series">Mean, cosine and sine of each wave, drift.</param>
    /// <param name="row">As long as the series.</param>
    public static (double Height, double Slope) Fill(
        double sine, double cosine, double course, int harmonics, double[] series, Span<double> row)
    {
        var (s, c) = (0.0, 1.0);
        var (height, slope) = (series[0], 0.0);
        row[0] = 1;
        for (var k = 1; k <= harmonics; k++)
        {
            (s, c) = (s * cosine + c * sine, c * cosine - s * sine);
            var (p, q) = (2 * k - 1, 2 * k);
            (row[p], row[q]) = (c, s);
            height += series[p] * c + series[q] * s;
            slope += k * (series[q] * c - series[p] * s);
        }

        for (var d = 0; d < series.Length - 1 - 2 * harmonics; d++)
        {
            var p = 1 + 2 * harmonics + d;
            row[p] = d == 0 ? course : (3 * course * course - 1) / 2;
            height += series[p] * row[p];
        }

        return (height, 2 * Math.PI * slope);
    }

    /// <summary>Sine and cosine of many angles in turns, and from them the height of each.</summary>
    public static void Heights(
        ReadOnlySpan<double> turns, ReadOnlySpan<double> course, int harmonics, ReadOnlySpan<double> series, Span<double> heights)
    {
        var i = 0;
        for (; i <= turns.Length - Vector<double>.Count; i += Vector<double>.Count)
        {
            HeightOf(new Vector<double>(turns[i..]), new Vector<double>(course[i..]), harmonics, series).CopyTo(heights[i..]);
        }

        for (; i < turns.Length; i++)
        {
            heights[i] = HeightOf(new Vector<double>(turns[i]), new Vector<double>(course[i]), harmonics, series)[0];
        }
    }

    /// <summary>Sines and cosines of many angles in turns.</summary>
    public static void SinesAndCosines(ReadOnlySpan<double> turns, Span<double> sines, Span<double> cosines)
    {
        var i = 0;
        for (; i <= turns.Length - Vector<double>.Count; i += Vector<double>.Count)
        {
            var (sine, cosine) = SinCos(new Vector<double>(turns[i..]));
            sine.CopyTo(sines[i..]);
            cosine.CopyTo(cosines[i..]);
        }

        for (; i < turns.Length; i++)
        {
            var (sine, cosine) = SinCos(new Vector<double>(turns[i]));
            (sines[i], cosines[i]) = (sine[0], cosine[0]);
        }
    }

    private static (Vector<double> Sine, Vector<double> Cosine) SinCos(Vector<double> turns) =>
        Vector.SinCos(2 * Math.PI * (turns - Vector.Floor(turns)));

    private static Vector<double> HeightOf(Vector<double> turns, Vector<double> course, int harmonics, ReadOnlySpan<double> series)
    {
        var (sine, cosine) = SinCos(turns);
        var (s, c) = (Vector<double>.Zero, Vector<double>.One);
        var height = new Vector<double>(series[0]);
        for (var k = 1; k <= harmonics; k++)
        {
            (s, c) = (s * cosine + c * sine, c * cosine - s * sine);
            height += series[2 * k - 1] * c + series[2 * k] * s;
        }

        for (var d = 1 + 2 * harmonics; d < series.Length; d++)
        {
            height += series[d] * (d == 1 + 2 * harmonics ? course : (3 * course * course - Vector<double>.One) / 2);
        }

        return height;
    }
}
