namespace Handspun.Metrology.Fitting;

/// <summary>What a gauge's rounding does to the unknowns of a fit, as far as noise does not shake it out.</summary>
/// <remarks>
/// The mean of a rounded reading is off by Σ (−1)ᵏ·step/(πk)·exp(−2π²k²·(noise/step)²)·sin(2πk·height/step): the sawtooth of the
/// rounding error under the noise's spread (the theory of dither; from memory). Heights that the fit dwells on are all off alike, others cancel, so each term is
/// carried through the fit reading by reading, with the phase of the steps left open.
/// </remarks>
/// <param name="size">Unknowns.</param>
/// <param name="step">The gauge's step, in millimetres; 0 for none.</param>
/// <param name="variance">Variance of the readings about the fit, the rounding's own share included, in square millimetres.</param>
internal sealed class RoundingSums(int size, double step, double variance)
{
    private const int Terms = 3;
    private const double Nothing = 1e-3;
    private readonly double[] _powers = Powers(step, variance);
    private readonly double[] _cosines = new double[size * Terms];
    private readonly double[] _sines = new double[size * Terms];

    /// <summary>What noise leaves of a term of the rounding, 0 to 1, when many readings are averaged: exp(−2π²k²(noise/step)²) (the theory of dither).</summary>
    /// <param name="variance">Variance of the readings, the rounding's own included.</param>
    /// <param name="step">The gauge's step; above 0.</param>
    /// <param name="term">Which term of the sawtooth, from 1.</param>
    public static double Left(double variance, double step, int term = 1) =>
        Math.Exp(-2 * Math.PI * Math.PI * term * term * Math.Max(0, variance - step * step / 12) / (step * step));

    /// <summary>Whether there is anything to add up.</summary>
    public bool Any => _powers.Length > 0;

    /// <summary>The share of the readings' variance that is not a matter of the height, 0 to 1.</summary>
    public double ShareOfNoise => Any ? Math.Max(0, variance - _powers.Sum()) / variance : 1;

    /// <summary>Adds a reading.</summary>
    /// <param name="influence">By how much each unknown follows the reading.</param>
    /// <param name="height">The fit at the reading, in millimetres.</param>
    public void Add(ReadOnlySpan<double> influence, double height)
    {
        var (sine, cosine) = Math.SinCos(2 * Math.PI * height / step);
        var (s, c) = (0.0, 1.0);
        for (var k = 0; k < _powers.Length; k++)
        {
            (s, c) = (s * cosine + c * sine, c * cosine - s * sine);
            for (var p = 0; p < size; p++)
            {
                _cosines[k * size + p] += c * influence[p];
                _sines[k * size + p] += s * influence[p];
            }
        }
    }

    /// <summary>Covariance of the unknowns from the rounding, full square.</summary>
    public double[] Covariance()
    {
        var covariance = new double[size * size];
        for (var k = 0; k < _powers.Length; k++)
        {
            var c = _cosines.AsSpan(k * size, size);
            var s = _sines.AsSpan(k * size, size);
            for (var p = 0; p < size; p++)
            {
                for (var q = 0; q < size; q++)
                {
                    covariance[p * size + q] += _powers[k] * (c[p] * c[q] + s[p] * s[q]);
                }
            }
        }

        return covariance;
    }

    // Mean square of each term; none where noise leaves nothing of the first.
    private static double[] Powers(double step, double variance)
    {
        if (step <= 0 || variance <= 0)
        {
            return [];
        }

        return Left(variance, step) < Nothing ? [] : [.. Enumerable.Range(1, Terms).Select(k => Math.Pow(step / (Math.PI * k) * Left(variance, step, k), 2) / 2)];
    }
}
