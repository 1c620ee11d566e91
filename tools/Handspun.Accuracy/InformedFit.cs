using Handspun.Simulation;

namespace Handspun.Accuracy;

/// <summary>The runout by a fit that is told the true angle and the true number of waves: the best that can be hoped for.</summary>
internal static class InformedFit
{
    /// <summary>The runout in millimetres; ordinary least squares, wild readings known to be wild left out.</summary>
    public static double Tir(DrawnCapture drawn)
    {
        var capture = drawn.Capture;
        var waves = drawn.Shape.Waves.Count;
        var drift = drawn.Indicator.DriftMicrometres > 0;
        var size = 1 + 2 * waves + (drift ? 1 : 0);
        var level = Median(capture.Millimetres.Select((value, i) => value - drawn.Shape.HeightAt(capture.TrueDegrees[i])));
        List<double[]> rows = [];
        List<double> heights = [];
        for (var i = 0; i < capture.Seconds.Length; i++)
        {
            var off = Math.Abs(capture.Millimetres[i] - level - drawn.Shape.HeightAt(capture.TrueDegrees[i]));
            if (off > 0.012 + 2 * drawn.Indicator.ResolutionMillimetres)
            {
                continue;
            }

            var row = new double[size];
            row[0] = 1;
            for (var k = 1; k <= waves; k++)
            {
                (row[2 * k], row[2 * k - 1]) = Math.SinCos(k * capture.TrueDegrees[i] * Math.PI / 180);
            }

            if (drift)
            {
                row[^1] = capture.Seconds[i] / capture.Seconds[^1];
            }

            rows.Add(row);
            heights.Add(capture.Millimetres[i]);
        }

        var series = MathNet.Numerics.LinearRegression.MultipleRegression.NormalEquations(rows.ToArray(), heights.ToArray());
        return new ShaftShape(Enumerable.Range(1, waves).Select(k => new ShaftWave(
            k,
            Math.Sqrt(series[2 * k - 1] * series[2 * k - 1] + series[2 * k] * series[2 * k]),
            Math.Atan2(series[2 * k], series[2 * k - 1]) * 180 / Math.PI))).TirMillimetres;
    }

    private static double Median(IEnumerable<double> values)
    {
        double[] sorted = [.. values.Order()];
        return sorted[sorted.Length / 2];
    }
}
