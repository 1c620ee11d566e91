using Handspun.Metrology.Fitting;

namespace Handspun.Metrology.Runout.Rotation;

/// <summary>Residuals and weights of every reading about a profile that was fitted to thinned ones.</summary>
internal static class RobustWeights
{
    /// <summary>Holds each reading against the profile and the drift.</summary>
    public static (double[] Residuals, double[] Weights) Of(Trace trace, double[] turns, double[] series, int harmonics, double floor)
    {
        var residuals = new double[turns.Length];
        for (var i = 0; i < residuals.Length; i++)
        {
            var course = trace.Course(i);
            var (s, c) = Math.SinCos(2 * Math.PI * turns[i]);
            var (sine, cosine, height) = (0.0, 1.0, series[0]);
            for (var k = 1; k <= harmonics; k++)
            {
                (sine, cosine) = (sine * c + cosine * s, cosine * c - sine * s);
                height += series[2 * k - 1] * cosine + series[2 * k] * sine;
            }

            for (var d = 1 + 2 * harmonics; d < series.Length; d++)
            {
                height += series[d] * (d == 1 + 2 * harmonics ? course : (3 * course * course - 1) / 2);
            }

            residuals[i] = trace.Millimetres[i] - height;
        }

        var weights = new double[turns.Length];
        Biweight.Set(residuals, floor, weights);
        return (residuals, weights);
    }
}
