using MathNet.Numerics.LinearAlgebra;

namespace Handspun.Metrology.EndPlay;

/// <summary>Both stops and the drift of the stand over the capture, as a row of knowns for each hold.</summary>
/// <remarks>The unknowns are the low stop, the high stop, and the powers of time, first to <paramref name="order"/>-th, that both share.</remarks>
internal sealed class StopModel(IReadOnlyList<Hold> holds, int order)
{
    private readonly double _middle = (holds[0].Seconds + holds[^1].Seconds) / 2;
    private readonly double _half = Math.Max(1e-9, (holds[^1].Seconds - holds[0].Seconds) / 2);

    /// <summary>How many unknowns there are.</summary>
    public int Unknowns => 2 + order;

    /// <summary>The knowns of a hold.</summary>
    public double[] Row(Hold hold) =>
        [hold.Stop == Stop.Low ? 1 : 0, hold.Stop == Stop.High ? 1 : 0, .. Powers(hold.Seconds)];

    /// <summary>The drift at a time, in millimetres.</summary>
    public double Drift(Vector<double> unknowns, double seconds)
    {
        var powers = Powers(seconds);
        var drift = 0.0;
        for (var k = 0; k < order; k++)
        {
            drift += unknowns[2 + k] * powers[k];
        }

        return drift;
    }

    /// <summary>The unknowns that fit the holds best by least squares; null where the holds do not settle them.</summary>
    /// <param name="weights">One for each hold, 0 or more.</param>
    public Vector<double>? Fit(IReadOnlyList<double> weights)
    {
        var normal = Matrix<double>.Build.Dense(Unknowns, Unknowns);
        var right = Vector<double>.Build.Dense(Unknowns);
        for (var i = 0; i < holds.Count; i++)
        {
            var row = Row(holds[i]);
            for (var a = 0; a < row.Length; a++)
            {
                right[a] += weights[i] * holds[i].Millimetres * row[a];
                for (var b = 0; b < row.Length; b++)
                {
                    normal[a, b] += weights[i] * row[a] * row[b];
                }
            }
        }

        var solution = normal.Solve(right);
        return solution.All(double.IsFinite) ? solution : null;
    }

    /// <summary>How far each hold pulls a fit of even weights to itself, from 0 to 1.</summary>
    public double[] Leverages()
    {
        var rows = Matrix<double>.Build.DenseOfRowArrays(holds.Select(Row));
        var inverse = rows.TransposeThisAndMultiply(rows).Inverse();
        return [.. rows.EnumerateRows().Select(row => row * inverse * row)];
    }

    /// <summary>What a fit leaves of each hold.</summary>
    public double[] Residuals(Vector<double> unknowns) =>
        [.. holds.Select(hold => hold.Millimetres - Vector<double>.Build.DenseOfArray(Row(hold)).DotProduct(unknowns))];

    /// <summary>The model whose drift explains the holds best for the unknowns that it spends (Akaike's criterion, corrected for few data).</summary>
    /// <param name="holds">The holds that count, in order. At least three.</param>
    /// <param name="floor">The least standard deviation that holds may be said to scatter by.</param>
    public static StopModel WithBestDrift(IReadOnlyList<Hold> holds, double floor)
    {
        const int highest = 3;
        const int holdsForEach = 4;   // or a bend of the drift is found in what is only the hand's pressure
        var (best, chosen) = (double.PositiveInfinity, new StopModel(holds, 0));
        var even = Enumerable.Repeat(1.0, holds.Count).ToArray();
        for (var tried = holds.Count >= 4 ? 1 : 0; tried <= Math.Clamp((holds.Count - 2) / holdsForEach, 1, highest); tried++)
        {
            var model = new StopModel(holds, tried);
            if (holds.Count < model.Unknowns || model.Fit(even) is not { } fit)
            {
                break;
            }

            var scatter = model.Residuals(fit).Sum(residual => residual * residual) / holds.Count + floor * floor;
            var spent = model.Unknowns + 1;
            var score = holds.Count * Math.Log(scatter) + 2 * spent + 2.0 * spent * (spent + 1) / Math.Max(1, holds.Count - spent - 1);
            if (score < best)
            {
                (best, chosen) = (score, model);
            }
        }

        return chosen;
    }

    private double[] Powers(double seconds)
    {
        var powers = new double[order];
        var at = (seconds - _middle) / _half;
        for (var (k, power) = (0, at); k < order; k++, power *= at)
        {
            powers[k] = power;
        }

        return powers;
    }
}
