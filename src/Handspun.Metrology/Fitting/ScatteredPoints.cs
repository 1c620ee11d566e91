using System.Collections.Concurrent;
using MathNet.Numerics;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;

namespace Handspun.Metrology.Fitting;

/// <summary>Points scattered evenly as two normal distributions about zero have it, one of unit width and a wider one, half of each.</summary>
/// <remarks>Always the same points (Halton's sequence, 1960), so that the same readings give the same answer.</remarks>
internal static class ScatteredPoints
{
    private const int Points = 600;
    private const double Wider = 2.5;
    private static readonly int[] Primes = [2, 3, 5, 7, 11];
    private static readonly ConcurrentDictionary<int, (Vector<double> Place, double LogDensity)[]> Made = new();

    /// <summary>The points, with the logarithm of how densely they lie.</summary>
    /// <param name="size">Numbers in a point, 1 to 5.</param>
    public static IReadOnlyList<(Vector<double> Place, double LogDensity)> Of(int size) => Made.GetOrAdd(size, _ => [.. Enumerable.Range(1, Points).Select(i => Point(i, size))]);

    private static (Vector<double> Place, double LogDensity) Point(int number, int size)
    {
        var width = number % 2 == 0 ? 1 : Wider;
        var place = Vector<double>.Build.Dense(size, k => width * Normal.InvCDF(0, 1, Halton(number / 2 + 1, Primes[k])));
        var square = place.DotProduct(place);
        var narrow = Math.Exp(-square / 2);
        var wide = Math.Exp(-square / (2 * Wider * Wider)) / Math.Pow(Wider, size);
        return (place, Math.Log((narrow + wide) / 2) - size * Math.Log(Constants.Sqrt2Pi));
    }

    private static double Halton(int number, int prime)
    {
        var (sum, part) = (0.0, 1.0);
        for (var rest = number; rest > 0; rest /= prime)
        {
            part /= prime;
            sum += part * (rest % prime);
        }

        return sum;
    }
}
