namespace Handspun.Metrology.Fitting;

/// <summary>One reading's row of the design: the profile's waves and the drift.</summary>
internal static class FourierRow
{
    /// <summary>Fills the row, and gives the height and its slope per turn.</summary>
    /// <param name="turns">The angle, in turns.</param>
    /// <param name="course">Time from −1 to 1, for the drift.</param>
    /// <param name="harmonics">Waves.</param>
    /// <param name="series">Mean, cosine and sine of each wave, drift.</param>
    /// <param name="row">As long as the series.</param>
    public static (double Height, double Slope) Fill(double turns, double course, int harmonics, double[] series, Span<double> row)
    {
        var (sine, cosine) = Math.SinCos(2 * Math.PI * (turns - Math.Floor(turns)));
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
}
