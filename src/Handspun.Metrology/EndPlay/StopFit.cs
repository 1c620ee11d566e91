using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;

namespace Handspun.Metrology.EndPlay;

/// <summary>Both stops and the drift, with what is known of them.</summary>
/// <param name="Model">The knowns.</param>
/// <param name="Unknowns">Low stop, high stop, drift.</param>
/// <param name="Uncertainty">Standard uncertainty of high minus low stop, in millimetres.</param>
/// <param name="WithoutRounding">What it would be, did the gauge not round.</param>
internal sealed record StopFit(StopModel Model, Vector<double> Unknowns, double Uncertainty, double WithoutRounding)
{
    private const int Sweeps = 40;
    private const double Damping = 0.7;

    // How far a stop is held differently from time to time, before the holds themselves have told: half a micrometre, worth one hold.
    private const double UsualPressure = 0.0005;
    private const double UsualWorth = 1;

    /// <summary>High minus low stop, in millimetres.</summary>
    public double Apart => Unknowns[1] - Unknowns[0];

    /// <summary>Fits the holds, each reading taken as what it is: a step of the gauge within which it fell.</summary>
    /// <remarks>
    /// The level of a hold is the stop plus the drift plus how the hand pressed this time, which is normal with a variance
    /// of its own. Rounded readings make the likelihood of a level flat in the middle and steep at the ends, so no least
    /// squares: each hold's part is put in by the mean and variance that it leaves to the rest (expectation propagation,
    /// Minka 2001), and the pressure's variance is learned on the way (expectation maximisation).
    /// </remarks>
    /// <param name="holds">The holds that count, in order. At least three, of both stops.</param>
    /// <param name="values">The readings of each.</param>
    /// <param name="step">The gauge's step.</param>
    /// <param name="reach">A length that no stop and no drift exceeds.</param>
    public static StopFit Of(IReadOnlyList<Hold> holds, IReadOnlyList<double[]> values, double step, double reach)
    {
        var noise = HoldNoise.Of(values, step);
        var levels = values.Select(hold => RoundedLevel.Of(hold, step, noise)).ToArray();
        var model = StopModel.WithBestDrift(holds, Math.Max(0.0001, step / Math.Sqrt(12) / 2));
        var rows = holds.Select(hold => Vector<double>.Build.DenseOfArray(model.Row(hold))).ToArray();
        var origin = holds.Average(hold => hold.Millimetres);

        var prior = Matrix<double>.Build.DenseDiagonal(model.Unknowns, model.Unknowns, k => 1 / (k < 2 ? 4 * reach * reach : 0.09 * reach * reach));
        var pressure = Math.Max(UsualPressure * UsualPressure, 1e-8);
        var precision = new double[holds.Count];
        var pull = new double[holds.Count];
        for (var i = 0; i < holds.Count; i++)
        {
            precision[i] = 1 / (pressure + step * step / 12 + noise * noise / values[i].Length);
            pull[i] = precision[i] * (holds[i].Millimetres - origin);
        }

        var (mean, covariance) = Joined(prior, rows, precision, pull);
        for (var sweep = 0; sweep < Sweeps; sweep++)
        {
            var sum = UsualWorth * UsualPressure * UsualPressure;
            for (var i = 0; i < holds.Count; i++)
            {
                var (centre, variance) = Without(rows[i], mean, covariance, precision[i], pull[i]);
                var (level, doubt) = levels[i].Given(origin + centre, variance + pressure);
                var share = variance / (variance + pressure);
                var after = Math.Max(1e-15, variance * (1 - share) + share * share * doubt);
                var at = centre + share * (level - origin - centre);

                // Where two places are likely for a hold, it may seem to know less than nothing: it keeps what it said before.
                if (after < variance)
                {
                    precision[i] += Damping * (1 / after - 1 / variance - precision[i]);
                    pull[i] += Damping * (at / after - centre / variance - pull[i]);
                }

                var off = (1 - share) * (level - origin - centre);
                sum += variance * (1 - share) + (1 - share) * (1 - share) * doubt + off * off;
            }

            pressure = sum / (holds.Count + UsualWorth);
            (mean, covariance) = Joined(prior, rows, precision, pull);
        }

        var widening = StudentT.InvCDF(0, 1, Math.Max(1, holds.Count - model.Unknowns), 0.975) / 2;
        var smooth = rows.Select((_, i) => 1 / (pressure + noise * noise / values[i].Length)).ToArray();
        var (_, unrounded) = Joined(prior, rows, smooth, pull);
        mean[0] += origin;
        mean[1] += origin;
        return new(model, mean, Math.Sqrt(Apartness(covariance)) * widening, Math.Sqrt(Apartness(unrounded)) * widening);
    }

    private static (Vector<double> Mean, Matrix<double> Covariance) Joined(Matrix<double> prior, Vector<double>[] rows, double[] precision, double[] pull)
    {
        var normal = prior.Clone();
        var right = Vector<double>.Build.Dense(prior.RowCount);
        for (var i = 0; i < rows.Length; i++)
        {
            normal += precision[i] * rows[i].OuterProduct(rows[i]);
            right += pull[i] * rows[i];
        }

        var covariance = normal.Inverse();
        return (covariance * right, covariance);
    }

    // What all other holds say of this one's stop and drift.
    private static (double Centre, double Variance) Without(Vector<double> row, Vector<double> mean, Matrix<double> covariance, double precision, double pull)
    {
        var variance = row * covariance * row;
        var rest = Math.Max(1e-9 / variance, 1 / variance - precision);
        return ((row * mean / variance - pull) / rest, 1 / rest);
    }

    private static double Apartness(Matrix<double> covariance) => covariance[0, 0] + covariance[1, 1] - 2 * covariance[0, 1];
}
