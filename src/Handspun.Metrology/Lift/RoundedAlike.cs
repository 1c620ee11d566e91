using Handspun.Metrology.Fitting;

namespace Handspun.Metrology.Lift;

/// <summary>Readings that tell less than their number, because the gauge rounds all of them the same way.</summary>
internal static class RoundedAlike
{
    private const double FewTellAsMuch = 3;

    /// <summary>How many times larger the variance of a fit to such readings is; 1 or more.</summary>
    /// <remarks>
    /// At rest every reading is rounded alike, turn after turn, where noise does not shake it over the step, and all readings
    /// together then tell no more than a few.
    /// </remarks>
    /// <param name="millimetres">The readings, in order; at least two.</param>
    /// <param name="sigma">Their scatter about the fit, above 0.</param>
    /// <param name="resolution">The gauge's step; 0 where there is none.</param>
    public static double Widening(ReadOnlySpan<double> millimetres, double sigma, double resolution)
    {
        var rounding = resolution * resolution / 12;
        if (rounding <= 0)
        {
            return 1;
        }

        var squares = 0.0;
        for (var i = 1; i < millimetres.Length; i++)
        {
            squares += (millimetres[i] - millimetres[i - 1]) * (millimetres[i] - millimetres[i - 1]) / 2;
        }

        var left = RoundingSums.Left(squares / (millimetres.Length - 1), resolution);
        return 1 + left * millimetres.Length / FewTellAsMuch * rounding / (sigma * sigma);
    }
}
