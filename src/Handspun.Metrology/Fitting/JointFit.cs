namespace Handspun.Metrology.Fitting;

/// <summary>Profile and angle fitted together: a short Fourier series in the angle, a smooth spline of time for the angle.</summary>
/// <remarks>
/// Damped Gauss-Newton on the weighted squares of the residuals plus a penalty on the second differences of the spline
/// (uneven speed is allowed, jolts are rare: see <see cref="HandBends"/>). The weight of the penalty follows from the data (Fellner and Schall), and
/// readings far off the fit lose their weight (Tukey's biweight).
/// </remarks>
internal sealed class JointFit
{
    private const double DriftPrior = 0.02;
    private readonly FitGrid _grid;
    private readonly BorderedBand _matrix;
    private readonly IntervalSums _sums;
    private readonly HandBends _bends;
    private readonly double[] _bandSide;
    private readonly double[] _edgeSide;
    private readonly DampedSteps _steps;
    private readonly double[] _sines;
    private readonly double[] _cosines;
    private double[] _spline;
    private double[] _series;
    private double[] _nextSpline;
    private double[] _nextSeries;

    /// <summary>A fit with so many harmonics and a drift polynomial of such an order; not yet started.</summary>
    public JointFit(FitGrid grid, int harmonics, int driftOrder)
    {
        (_grid, Harmonics, DriftOrder) = (grid, harmonics, driftOrder);
        var border = 1 + 2 * harmonics + driftOrder;
        var length = grid.Spline.Coefficients;
        _matrix = new BorderedBand(length, border);
        _bends = new HandBends(length);
        (_sums, _edgeSide, _bandSide) = (new IntervalSums(border), new double[border], new double[length]);
        (_sines, _cosines) = (new double[grid.Seconds.Length], new double[grid.Seconds.Length]);
        _steps = new DampedSteps(_matrix, _bandSide, _edgeSide);
        (_spline, _nextSpline, _series, _nextSeries) = (new double[length], new double[length], new double[border], new double[border]);
        Weights = new double[grid.Seconds.Length];
        Residuals = new double[grid.Seconds.Length];
        Array.Fill(Weights, 1);
        Sigma = Math.Max(grid.NoiseFloor, 0.05 * grid.Range);
        Smoothness = 1 / (0.01 * 0.01);
    }

    /// <summary>The readings.</summary>
    public FitGrid Grid => _grid;

    /// <summary>Waves in the profile.</summary>
    public int Harmonics { get; }

    /// <summary>Order of the drift polynomial; 0 for none.</summary>
    public int DriftOrder { get; }

    /// <summary>Mean, then cosine and sine of each wave, then the drift's coefficients; millimetres.</summary>
    public ReadOnlySpan<double> Series => _series;

    /// <summary>Coefficients of the angle's spline, in turns.</summary>
    public ReadOnlySpan<double> Spline => _spline;

    /// <summary>Robust weight of each reading, 0 to 1.</summary>
    public double[] Weights { get; }

    /// <summary>Where a reading's robust weight ends, in standard deviations of the noise.</summary>
    public double Reach { get; init; } = 6;

    /// <summary>Reading minus fit, in millimetres.</summary>
    public double[] Residuals { get; }

    /// <summary>Standard deviation of the residuals, in millimetres.</summary>
    public double Sigma { get; private set; }

    /// <summary>Weight of the penalty: one over the variance of a second difference of the spline's coefficients, in turns.</summary>
    public double Smoothness { get; private set; }

    /// <summary>Minus twice the logarithm of the evidence (Laplace's approximation), up to a constant of the grid; less is better.</summary>
    public double Criterion { get; private set; } = double.PositiveInfinity;

    /// <summary>Readings for each one that is left over when the unknowns are paid for, at least 1.</summary>
    public double ReadingsPerFree { get; private set; } = 1;

    /// <summary>Covariance of <see cref="Series"/>, the angle's own doubt included, and apart from it what the gauge's rounding adds; both full square.</summary>
    /// <remarks>
    /// Where few readings are left over, noise and smoothness come from hardly more data than they are to judge;
    /// the covariance is widened by the share that is left (the power of 1.5 was found by simulation to be needed at slow gauges).
    /// </remarks>
    /// <param name="rounding">What the gauge's rounding is like.</param>
    public (double[] Noise, double[] Rounding) SeriesCovariance(RoundingSums rounding)
    {
        var covariance = SeriesCovariance();
        if (!rounding.Any)
        {
            return (covariance, new double[covariance.Length]);
        }

        // Of the readings' scatter, a part is a matter of the height: it goes over to the rounding.
        var widening = Math.Pow(ReadingsPerFree, 1.5) * (1 - rounding.ShareOfNoise);
        var influences = new SeriesInfluence(_matrix);
        var row = new double[4 + _series.Length];
        for (var i = 0; i < Residuals.Length; i++)
        {
            var weight = Weights[i] * _grid.Shares[i] / (Sigma * Sigma);
            if (weight == 0)
            {
                continue;
            }

            var (height, slope) = FourierRow.Fill(_sines[i], _cosines[i], _grid.Course[i], Harmonics, _series, row.AsSpan(4));
            for (var a = 0; a < 4; a++)
            {
                row[a] = slope * _grid.Basis[4 * i + a];
            }

            var influence = influences.Of(row, _grid.First[i], weight);
            rounding.Add(influence, height);
            for (var pq = 0; pq < covariance.Length; pq++)
            {
                covariance[pq] -= widening / weight * influence[pq / influence.Length] * influence[pq % influence.Length];
            }
        }

        return (covariance, rounding.Covariance());
    }

    /// <summary>Covariance of <see cref="Series"/> if the readings' scatter were noise alone; full square.</summary>
    public double[] SeriesCovariance()
    {
        Assemble(_spline, _series);
        _matrix.TryFactor(0);
        var covariance = _matrix.InverseCorner();
        var widening = Math.Pow(ReadingsPerFree, 1.5);
        for (var i = 0; i < covariance.Length; i++)
        {
            covariance[i] *= widening;
        }

        return covariance;
    }

    /// <summary>The angle at a moment, in turns.</summary>
    public double TurnsAt(double seconds) => _grid.Spline.At(seconds, _spline);

    /// <summary>The angle at each reading, in turns.</summary>
    public double[] Turns()
    {
        var turns = new double[_grid.Seconds.Length];
        Angles(_spline, turns);
        return turns;
    }

    /// <summary>Starts from an angle for each reading.</summary>
    public void StartFrom(ReadOnlySpan<double> turns)
    {
        const double doubt = 0.03;
        _matrix.Clear();
        Array.Clear(_bandSide);
        for (var i = 0; i < turns.Length; i++)
        {
            SplineNormals.AddAnchor(_matrix, _bandSide, _grid.First[i], _grid.Basis.AsSpan(4 * i, 4), turns[i], doubt);
        }

        for (var a = 0; a < _grid.Anchors.Count; a++)
        {
            SplineNormals.AddAnchor(_matrix, _bandSide, _grid.AnchorFirst[a], _grid.AnchorBasis.AsSpan(4 * a, 4), _grid.Anchors[a].Turns, _grid.Anchors[a].Doubt);
        }

        SplineNormals.AddPenalty(_matrix, _bandSide, _spline, Smoothness, _bends.Shares);
        for (var q = 0; q < _matrix.BorderSize; q++)
        {
            _matrix.Corner[q * _matrix.BorderSize + q] = 1;
        }

        Array.Clear(_edgeSide);
        if (_matrix.TryFactor(1e-9))
        {
            _matrix.Solve(_bandSide, _edgeSide);
            _bandSide.CopyTo(_spline, 0);
        }

        FitSeries();
    }

    /// <summary>Starts from an angle for each reading and what another fit of the same order found.</summary>
    public void StartFrom(ReadOnlySpan<double> turns, ReadOnlySpan<double> series, double sigma, double smoothness)
    {
        StartFrom(turns);
        series.CopyTo(_series);
        (Sigma, Smoothness) = (sigma, smoothness);
    }

    /// <summary>Starts from another fit with the same spline, of any order; robust weights only from the same readings.</summary>
    public void StartFrom(JointFit other)
    {
        other._spline.CopyTo(_spline, 0);
        var waves = 1 + 2 * Math.Min(Harmonics, other.Harmonics);
        other._series.AsSpan(0, waves).CopyTo(_series);
        for (var d = 0; d < Math.Min(DriftOrder, other.DriftOrder); d++)
        {
            _series[1 + 2 * Harmonics + d] = other._series[1 + 2 * other.Harmonics + d];
        }

        if (other._grid == _grid)
        {
            other.Weights.CopyTo(Weights, 0);
        }

        (Sigma, Smoothness) = (other.Sigma, other.Smoothness);
        _bends.StartFrom(other._bends);
    }

    /// <summary>Makes the angle stiff to begin with: second differences of the spline's coefficients are about this many turns.</summary>
    public void Stiffen(double bend) => Smoothness = 1 / (bend * bend);

    /// <summary>Improves the fit for so many rounds at most; each takes a step, then renews the noise, the smoothness and the weights.</summary>
    /// <param name="rounds">Rounds at most.</param>
    /// <param name="tolerance">Change of <see cref="Criterion"/> below which it is done.</param>
    /// <param name="hold">Whether smoothness and weights stay as they are: a stiff angle makes good readings look wild.</param>
    public void Run(int rounds, double tolerance = 0.1, bool hold = false)
    {
        for (var round = 0; round < rounds; round++)
        {
            Step();
            if (!_matrix.TryFactor(0))   // without the damping of the step
            {
                Criterion = double.PositiveInfinity;
                return;
            }

            var (criterion, smoothness) = (Criterion, Smoothness);
            Weigh(robust: !hold);
            Smoothness = hold ? smoothness : Smoothness;
            if (Math.Abs(criterion - Criterion) < tolerance && Math.Abs(Math.Log(Smoothness / smoothness)) < 0.1)
            {
                return;
            }
        }
    }

    // One step that does not make the fit worse; leaves the matrix of the place it began at, and the residuals of the place it ends at.
    private void Step()
    {
        var objective = Assemble(_spline, _series);
        if (_steps.Try(_spline, _series, _nextSpline, _nextSeries, objective, Objective))
        {
            (_spline, _nextSpline, _series, _nextSeries) = (_nextSpline, _spline, _nextSeries, _series);
            return;
        }

        Objective(_spline, _series);
    }

    // Objective and residuals at a place; the matrix stays as it is.
    private double Objective(double[] spline, double[] series)
    {
        var inverse = 1 / (Sigma * Sigma);
        var objective = 0.0;
        Angles(spline, _sines);
        FourierRow.Heights(_sines, _grid.Course, Harmonics, series, _cosines);
        for (var i = 0; i < Residuals.Length; i++)
        {
            var residual = _grid.Millimetres[i] - _cosines[i];
            Residuals[i] = residual;
            objective += Weights[i] * _grid.Shares[i] * inverse * residual * residual;
        }

        for (var a = 0; a < _grid.Anchors.Count; a++)
        {
            var miss = Miss(spline, a) / _grid.Anchors[a].Doubt;
            objective += miss * miss;
        }

        return objective + Smoothness * _bends.Squares(spline) + SquaredPriors(series);
    }

    // Objective, matrix and right-hand side at a place; residuals too.
    private double Assemble(double[] spline, double[] series)
    {
        _matrix.Clear();
        Array.Clear(_bandSide);
        Array.Clear(_edgeSide);
        var inverse = 1 / (Sigma * Sigma);
        var objective = 0.0;
        var row = _sums.Row;
        var columns = row.AsSpan(4, series.Length);
        var interval = _grid.First[0];
        Angles(spline, _sines);
        FourierRow.SinesAndCosines(_sines, _sines, _cosines);
        for (var i = 0; i < Residuals.Length; i++)
        {
            var (height, slope) = FourierRow.Fill(_sines[i], _cosines[i], _grid.Course[i], Harmonics, series, columns);
            var residual = _grid.Millimetres[i] - height;
            Residuals[i] = residual;
            var weight = Weights[i] * _grid.Shares[i] * inverse;
            if (weight == 0)
            {
                continue;
            }

            if (_grid.First[i] != interval)
            {
                _sums.Flush(interval, _matrix, _bandSide, _edgeSide);
                interval = _grid.First[i];
            }

            for (var a = 0; a < 4; a++)
            {
                row[a] = slope * _grid.Basis[4 * i + a];
            }

            row[4 + series.Length] = residual;
            _sums.Add(weight);
            objective += weight * residual * residual;
        }

        _sums.Flush(interval, _matrix, _bandSide, _edgeSide);
        for (var a = 0; a < _grid.Anchors.Count; a++)
        {
            var miss = Miss(spline, a);
            SplineNormals.AddAnchor(_matrix, _bandSide, _grid.AnchorFirst[a], _grid.AnchorBasis.AsSpan(4 * a, 4), miss, _grid.Anchors[a].Doubt);
            objective += miss * miss / (_grid.Anchors[a].Doubt * _grid.Anchors[a].Doubt);
        }

        return objective + SplineNormals.AddPenalty(_matrix, _bandSide, spline, Smoothness, _bends.Shares) + AddPriors(series);
    }

    private double Miss(double[] spline, int anchor)
    {
        var basis = _grid.AnchorBasis.AsSpan(4 * anchor, 4);
        var c = spline.AsSpan(_grid.AnchorFirst[anchor], 4);
        return _grid.Anchors[anchor].Turns - (basis[0] * c[0] + basis[1] * c[1] + basis[2] * c[2] + basis[3] * c[3]);
    }

    private void Angles(double[] spline, double[] turns)
    {
        for (var i = 0; i < turns.Length; i++)
        {
            var first = _grid.First[i];
            var basis = _grid.Basis.AsSpan(4 * i, 4);
            turns[i] = basis[0] * spline[first] + basis[1] * spline[first + 1] + basis[2] * spline[first + 2] + basis[3] * spline[first + 3];
        }
    }

    // Weak knowledge that keeps the matrix whole: waves are no larger than the range and the later ones a part of it (common
    // practice, no source: an off-centre shaft is rounder than it is centred), drift is a few hundredths at most, and
    // without an anchor the first reading is at zero.
    private double AddPriors(double[] series)
    {
        var sum = 0.0;
        for (var p = 1; p < series.Length; p++)
        {
            var scale = PriorScale(p);
            var weight = 1 / (scale * scale);
            _matrix.Corner[p * series.Length + p] += weight;
            _edgeSide[p] -= weight * series[p];
            sum += weight * series[p] * series[p];
        }

        return sum;
    }

    private double SquaredPriors(double[] series)
    {
        var sum = 0.0;
        for (var p = 1; p < series.Length; p++)
        {
            var ratio = series[p] / PriorScale(p);
            sum += ratio * ratio;
        }

        return sum;
    }

    private double PriorScale(int p)
    {
        var wave = (p + 1) / 2;
        return wave > Harmonics ? DriftPrior : (_grid.Range + _grid.NoiseFloor) * (wave == 1 ? 0.5 : 0.15 / wave);
    }

    private void FitSeries()
    {
        var small = new BorderedBand(0, _matrix.BorderSize);
        Array.Clear(_series);
        Assemble(_spline, _series);
        _matrix.Corner.CopyTo(small.Corner, 0);
        if (small.TryFactor(1e-9))
        {
            small.Solve([], _edgeSide);
            _edgeSide.CopyTo(_series, 0);
        }
    }

    private void Weigh(bool robust)
    {
        var bound = _bends.Count - Smoothness * _bends.Take(_spline, _matrix.InverseBand());   // bends that the readings decide
        var bends = _bends.Squares(_spline);
        var smoothness = Smoothness;
        var used = 0.0;
        var squares = 0.0;
        for (var i = 0; i < Residuals.Length; i++)
        {
            var weight = Weights[i] * _grid.Shares[i];
            used += weight;
            squares += weight * Residuals[i] * Residuals[i];
        }

        var free = Math.Max(used - _series.Length - 2 - bound, 0.2 * used + 1);
        var sigma = Math.Max(Math.Sqrt(squares / free), _grid.NoiseFloor);
        ReadingsPerFree = Math.Max(1, used / free);
        Criterion = Evidence();

        // The rule approaches its end slowly, so it is let overshoot a little.
        var change = Math.Clamp(Math.Pow(bound / Math.Max(bends, 1e-12) / smoothness, 1.5), 0.1, 10);
        Smoothness = Math.Clamp(smoothness * change, 1 / (0.1 * 0.1), 1 / (0.0001 * 0.0001));
        Sigma = sigma;
        if (robust)
        {
            _bends.Reweigh(Smoothness);
            // With many unknowns the fit follows the noise, and the residuals' middle size is smaller than that.
            Biweight.Set(Residuals, _grid.NoiseFloor, Weights, Reach * Math.Sqrt(ReadingsPerFree));
        }
    }

    private double Evidence()
    {
        var (loss, count) = (0.0, 0.0);
        var limit = Reach * Reach / 3;
        for (var i = 0; i < Residuals.Length; i++)
        {
            var ratio = Residuals[i] / (Reach * Sigma);
            var rest = 1 - ratio * ratio;
            count += _grid.Shares[i];
            loss += _grid.Shares[i] * (rest > 0 ? limit * (1 - rest * rest * rest) : limit);
        }

        var prior = 0.0;
        for (var p = 1; p < _series.Length; p++)
        {
            prior -= 2 * Math.Log(PriorScale(p));
        }

        return 2 * count * Math.Log(Sigma) + loss + _bends.Cost(Smoothness) + _matrix.LogDeterminant - prior;
    }
}
