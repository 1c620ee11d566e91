using Handspun.Metrology.Fitting;
using MathNet.Numerics.LinearAlgebra;

namespace Handspun.Metrology.Bore;

/// <summary>Readings of one capture, ready for a fit.</summary>
/// <param name="Seconds">Times.</param>
/// <param name="Millimetres">Values, larger where the gauge spans more.</param>
/// <param name="Pass">The pass that each belongs to, from 0.</param>
/// <param name="Lean">A first guess of the lean, in square roots of millimetres.</param>
/// <param name="Step">The gauge's step.</param>
/// <param name="Height">How far the reading usually climbs in a swing.</param>
internal sealed record RockReadings(double[] Seconds, double[] Millimetres, int[] Pass, double[] Lean, double Step, double Height);

/// <summary>The bore, the creep, the seat of each pass and the lean, fitted to all readings together.</summary>
internal sealed class RockFit
{
    private const int Rounds = 36;
    private const int LearnEvery = 4;

    // First the lean has to settle; a seat that may be anything would meanwhile take up what the lean and the creep are off by.
    private const int SettledAfter = 12;
    private const double UsualSeat = 0.0004;
    private const double UsualCreep = 0.01;
    private const double LeastNoise = 0.0002;
    private const double Reach = 7;

    // Where the gauge leans far, the reading moves fast and the model is only nearly right; so a reading is trusted less the higher it is.
    private const double TrustedHeight = 0.3;

    private readonly RockModel _model;
    private readonly RockReadings _readings;
    private Matrix<double> _normal;
    private double _seat = UsualSeat;

    private RockFit(RockModel model, RockReadings readings, double noise)
    {
        (_model, _readings, Noise) = (model, readings, noise);
        Unknowns = new double[model.Unknowns];
        _normal = Matrix<double>.Build.Dense(model.Unknowns, model.Unknowns);
        Covariance = _normal;
    }

    /// <summary>The unknowns, in the model's order.</summary>
    public double[] Unknowns { get; private set; }

    /// <summary>What the unknowns' doubts are, in the model's order.</summary>
    public Matrix<double> Covariance { get; private set; }

    /// <summary>Standard deviation of a reading near the turning point, before rounding, in millimetres.</summary>
    public double Noise { get; private set; }

    /// <summary>Fits.</summary>
    /// <param name="model">What is unknown.</param>
    /// <param name="readings">The readings.</param>
    /// <param name="bore">A first guess of the bore's reading.</param>
    /// <param name="noise">A first guess of the noise; above 0.</param>
    public static RockFit Of(RockModel model, RockReadings readings, double bore, double noise)
    {
        var fit = new RockFit(model, readings, Math.Max(LeastNoise, noise));
        fit.Begin(bore);
        for (var round = 0; round < Rounds; round++)
        {
            var left = fit.Improve(robust: round >= 2);
            if (round % LearnEvery == LearnEvery - 1)
            {
                fit.LearnNoise(left);
            }

            if (round > SettledAfter && round % 2 == 0)
            {
                fit.LearnSeat();
            }
        }

        fit.Covariance = fit._normal.Inverse();
        return fit;
    }

    /// <summary>The bore's reading in one pass, creep taken out, in millimetres.</summary>
    public double InPass(int pass) => Unknowns[RockModel.Bore] + Unknowns[RockModel.Seat(pass)];

    /// <summary>What the model says of a reading.</summary>
    private double Predicted(int i, double[] unknowns)
    {
        var lean = _model.Lean.At(_readings.Seconds[i], _model.LeanOf(unknowns));
        return unknowns[RockModel.Bore] + unknowns[RockModel.Creep] * _model.Part(_readings.Seconds[i]) + unknowns[RockModel.Seat(_readings.Pass[i])] + lean * lean;
    }

    // The guess of the lean, smoothed by the spline.
    private void Begin(double bore)
    {
        Unknowns[RockModel.Bore] = bore;
        var size = _model.Lean.Coefficients;
        var normal = Matrix<double>.Build.Dense(size, size);
        var right = Vector<double>.Build.Dense(size);
        Span<double> basis = stackalloc double[4];
        for (var i = 0; i < _readings.Seconds.Length; i++)
        {
            var first = _model.Lean.Basis(_readings.Seconds[i], basis);
            for (var a = 0; a < 4; a++)
            {
                right[first + a] += basis[a] * _readings.Lean[i];
                for (var b = 0; b < 4; b++)
                {
                    normal[first + a, first + b] += basis[a] * basis[b];
                }
            }
        }

        for (var k = 0; k + 2 < size; k++)
        {
            AddBend(normal, k, 1e-3);
        }

        for (var k = 0; k < size; k++)
        {
            normal[k, k] += 1e-9;
        }

        normal.Solve(right).AsArray().CopyTo(Unknowns, _model.FirstLean);
    }

    // One Newton step on the likelihood of the rounded readings; gives the weighted squares of what is left.
    private (double Squares, double Weights) Improve(bool robust)
    {
        var size = _model.Unknowns;
        var normal = Matrix<double>.Build.Dense(size, size);
        var gradient = Vector<double>.Build.Dense(size);
        Span<double> basis = stackalloc double[4];
        Span<int> places = stackalloc int[7];
        Span<double> slopes = stackalloc double[7];
        var (squares, weights) = (0.0, 0.0);
        for (var i = 0; i < _readings.Seconds.Length; i++)
        {
            var first = _model.Lean.Basis(_readings.Seconds[i], basis);
            var lean = _model.Lean.At(_readings.Seconds[i], _model.LeanOf(Unknowns));
            (places[0], places[1], places[2]) = (RockModel.Bore, RockModel.Creep, RockModel.Seat(_readings.Pass[i]));
            (slopes[0], slopes[1], slopes[2]) = (1, _model.Part(_readings.Seconds[i]), 1);
            for (var a = 0; a < 4; a++)
            {
                (places[3 + a], slopes[3 + a]) = (_model.FirstLean + first + a, 2 * lean * basis[a]);
            }

            var trust = 1 / (1 + Math.Pow(lean * lean / (TrustedHeight * _readings.Height), 2));
            var noise = Noise / Math.Sqrt(trust);
            var off = _readings.Millimetres[i] - Predicted(i, Unknowns);
            var reading = RoundedReading.Of(off, _readings.Step, noise);
            var weight = robust ? Believed((Math.Abs(off) - _readings.Step / 2) / noise) : 1;
            squares += weight * trust * reading.Square;
            weights += weight;
            for (var a = 0; a < 7; a++)
            {
                gradient[places[a]] += weight * reading.Gradient * slopes[a];
                for (var b = 0; b < 7; b++)
                {
                    normal[places[a], places[b]] += weight * reading.Curvature * slopes[a] * slopes[b];
                }
            }
        }

        AddPriors(normal, gradient);
        _normal = normal;
        var change = normal.Solve(gradient);
        for (var k = 0; k < size; k++)
        {
            Unknowns[k] += double.IsFinite(change[k]) ? change[k] : 0;
        }

        return (squares, weights);
    }

    private void AddPriors(Matrix<double> normal, Vector<double> gradient)
    {
        void Hold(int place, double doubt)
        {
            normal[place, place] += 1 / (doubt * doubt);
            gradient[place] -= Unknowns[place] / (doubt * doubt);
        }

        Hold(RockModel.Creep, UsualCreep);
        for (var pass = 0; pass < _model.Passes; pass++)
        {
            Hold(RockModel.Seat(pass), _seat);
        }

        // Next to nothing, only so that a stretch without readings has an answer too.
        var weight = 0.1 / _readings.Height;
        var lean = _model.LeanOf(Unknowns);
        for (var k = 0; k + 2 < lean.Length; k++)
        {
            var bend = weight * (lean[k] - 2 * lean[k + 1] + lean[k + 2]);
            AddBend(normal, _model.FirstLean + k, weight);
            gradient[_model.FirstLean + k] -= bend;
            gradient[_model.FirstLean + k + 1] += 2 * bend;
            gradient[_model.FirstLean + k + 2] -= bend;
        }

        for (var k = 0; k < lean.Length; k++)
        {
            normal[_model.FirstLean + k, _model.FirstLean + k] += 1e-3 / _readings.Height;
        }
    }

    private static void AddBend(Matrix<double> normal, int first, double weight)
    {
        ReadOnlySpan<double> bend = [1, -2, 1];
        for (var a = 0; a < 3; a++)
        {
            for (var b = 0; b < 3; b++)
            {
                normal[first + a, first + b] += weight * bend[a] * bend[b];
            }
        }
    }

    private static double Believed(double far)
    {
        var rest = far <= 0 ? 1 : 1 - far / Reach * (far / Reach);
        return rest > 0 ? rest * rest : 0;
    }

    // Noise and seat as the fit leaves them (expectation maximisation).
    private void LearnNoise((double Squares, double Weights) left)
    {
        var free = Math.Max(0.2, 1 - _model.Lean.Coefficients / Math.Max(1, left.Weights));
        Noise = Math.Max(LeastNoise, Math.Sqrt(left.Squares / Math.Max(1, left.Weights) / free));
    }

    private void LearnSeat()
    {
        var inverse = _normal.Inverse();
        var sum = UsualSeat * UsualSeat;
        for (var pass = 0; pass < _model.Passes; pass++)
        {
            var place = RockModel.Seat(pass);
            sum += Unknowns[place] * Unknowns[place] + inverse[place, place];
        }

        _seat = Math.Sqrt(sum / (_model.Passes + 1));
    }
}
