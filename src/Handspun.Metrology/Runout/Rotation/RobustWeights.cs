using Handspun.Metrology.Fitting;

namespace Handspun.Metrology.Runout.Rotation;

/// <summary>Residuals and weights of every reading about a profile that was fitted to thinned ones.</summary>
internal static class RobustWeights
{
    /// <summary>Holds each reading against the profile and the drift.</summary>
    public static (double[] Residuals, double[] Weights) Of(Trace trace, double[] turns, double[] series, int harmonics, double floor)
    {
        var residuals = new double[turns.Length];
        FourierRow.Heights(turns, trace.Courses(), harmonics, series, residuals);
        for (var i = 0; i < residuals.Length; i++)
        {
            residuals[i] = trace.Millimetres[i] - residuals[i];
        }

        var weights = new double[turns.Length];
        Biweight.Set(residuals, floor, weights);
        return (residuals, weights);
    }
}
