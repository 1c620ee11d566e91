namespace Handspun.Metrology.Fitting;

/// <summary>A Fourier profile and a drift fitted to readings whose angles are known: linear least squares with robust weights.</summary>
internal sealed class KnownAngleFit
{
    private readonly double[] _turns;
    private readonly double[] _millimetres;
    private readonly double[] _course;
    private readonly double[] _sines;
    private readonly double[] _cosines;
    private readonly BorderedBand _matrix;
    private readonly double _floor;

    /// <summary>Fits so many waves and a drift polynomial of such an order.</summary>
    /// <param name="turns">The angle of each reading, in turns.</param>
    /// <param name="millimetres">The readings.</param>
    /// <param name="course">Time of each reading, −1 at the first to 1 at the last; may be empty where there is no drift.</param>
    /// <param name="harmonics">Waves.</param>
    /// <param name="driftOrder">Order of the drift, 0 to 2.</param>
    /// <param name="floor">The least standard deviation of the residuals, in millimetres.</param>
    /// <param name="robust">Whether readings far off lose weight; false for ordinary least squares.</param>
    public KnownAngleFit(double[] turns, double[] millimetres, double[] course, int harmonics, int driftOrder, double floor, bool robust = true)
    {
        (_turns, _millimetres, _floor) = (turns, millimetres, floor);
        _course = course.Length > 0 ? course : new double[turns.Length];
        (_sines, _cosines) = (new double[turns.Length], new double[turns.Length]);
        FourierRow.SinesAndCosines(turns, _sines, _cosines);
        (Harmonics, DriftOrder) = (harmonics, driftOrder);
        _matrix = new BorderedBand(0, 1 + 2 * harmonics + driftOrder);
        Series = new double[_matrix.BorderSize];
        Residuals = new double[turns.Length];
        Weights = new double[turns.Length];
        Array.Fill(Weights, 1);
        for (var round = 0; round < (robust ? 6 : 1); round++)
        {
            Solve();
            Weigh(robust);
        }
    }

    /// <summary>Waves in the profile.</summary>
    public int Harmonics { get; }

    /// <summary>Order of the drift polynomial.</summary>
    public int DriftOrder { get; }

    /// <summary>Mean, then cosine and sine of each wave, then the drift's coefficients; millimetres.</summary>
    public double[] Series { get; }

    /// <summary>Reading minus fit, in millimetres.</summary>
    public double[] Residuals { get; }

    /// <summary>Robust weight of each reading, 0 to 1.</summary>
    public double[] Weights { get; }

    /// <summary>Standard deviation of the residuals, in millimetres.</summary>
    public double Sigma { get; private set; }

    /// <summary>The Bayesian information criterion; less is better.</summary>
    public double Criterion => 2 * _turns.Length * Math.Log(Sigma) + Series.Length * Math.Log(_turns.Length);

    /// <summary>Covariance of <see cref="Series"/>, and apart from it what the gauge's rounding adds; both full square.</summary>
    /// <param name="rounding">What the gauge's rounding is like.</param>
    public (double[] Noise, double[] Rounding) Covariance(RoundingSums rounding)
    {
        var covariance = Covariance(rounding.ShareOfNoise);
        if (rounding.Any)
        {
            var influences = new SeriesInfluence(_matrix);
            var row = new double[4 + Series.Length];
            for (var i = 0; i < _turns.Length; i++)
            {
                var (height, _) = FourierRow.Fill(_sines[i], _cosines[i], _course[i], Harmonics, Series, row.AsSpan(4));
                rounding.Add(influences.Of(row, 0, Weights[i]), height);
            }
        }

        return (covariance, rounding.Covariance());
    }

    /// <summary>Covariance of <see cref="Series"/> if so much of the readings' scatter is noise, full square.</summary>
    public double[] Covariance(double share = 1)
    {
        var covariance = _matrix.InverseCorner();
        for (var i = 0; i < covariance.Length; i++)
        {
            covariance[i] *= share * Sigma * Sigma;
        }

        return covariance;
    }

    private void Solve()
    {
        _matrix.Clear();
        var size = Series.Length;
        Span<double> row = stackalloc double[PaddedRow.Length(size + 1)];
        var sums = new double[size * row.Length];
        for (var i = 0; i < _turns.Length; i++)
        {
            FourierRow.Fill(_sines[i], _cosines[i], _course[i], Harmonics, Series, row[..size]);
            row[size] = _millimetres[i];
            for (var p = 0; p < size; p++)
            {
                PaddedRow.AddScaled(sums.AsSpan(p * row.Length, row.Length), row, Weights[i] * row[p]);
            }
        }

        var side = new double[size];
        for (var p = 0; p < size; p++)
        {
            sums.AsSpan(p * row.Length, p + 1).CopyTo(_matrix.Corner.AsSpan(p * size));
            side[p] = sums[p * row.Length + size];
        }

        if (!_matrix.TryFactor(1e-12))
        {
            return;
        }

        _matrix.Solve([], side);
        side.CopyTo(Series, 0);
        FourierRow.Heights(_turns, _course, Harmonics, Series, Residuals);
        for (var i = 0; i < _turns.Length; i++)
        {
            Residuals[i] = _millimetres[i] - Residuals[i];
        }
    }

    private void Weigh(bool robust)
    {
        var (squares, used) = (0.0, 0.0);
        for (var i = 0; i < Residuals.Length; i++)
        {
            squares += Weights[i] * Residuals[i] * Residuals[i];
            used += Weights[i];
        }

        Sigma = Math.Max(_floor, Math.Sqrt(squares / Math.Max(1, used - Series.Length)));
        if (robust)
        {
            Biweight.Set(Residuals, _floor, Weights);
        }
    }
}
