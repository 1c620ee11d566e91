using CsCheck;
using Handspun.Metrology.Roundness;

namespace Handspun.Metrology.Tests.Roundness;

/// <summary>Made-up profiles: a shaft of 20 mm radius with a few lobes and some noise.</summary>
internal static class Profiles
{
    public const double Radius = 20;

    /// <summary>Seeds of profiles; small steps would mean nothing.</summary>
    public static readonly Gen<int> Seed = Gen.Int[0, 1_000_000];

    public static double[] Degrees(int count) => [.. Enumerable.Range(0, count).Select(i => 360.0 * i / count)];

    /// <summary>Deviations in millimetres at evenly spaced angles.</summary>
    public static double[] Deviations(int seed, int count, double size = 0.01)
    {
        var chance = new Random(seed);
        var waves = Enumerable.Range(2, 4).Select(k => (K: k, A: size * chance.NextDouble() / k, Phase: chance.NextDouble() * 6)).ToArray();
        return [.. Degrees(count).Select(a => waves.Sum(w => w.A * Math.Cos(w.K * a * Math.PI / 180 - w.Phase)) + size * 0.2 * chance.NextDouble())];
    }

    public static (double[] X, double[] Y) Points(double[] degrees, double[] deviations, double radius = Radius) => (
        [.. degrees.Zip(deviations, (a, h) => (radius + h) * Math.Cos(a * Math.PI / 180))],
        [.. degrees.Zip(deviations, (a, h) => (radius + h) * Math.Sin(a * Math.PI / 180))]);

    public static RoundnessResult Round(double[] x, double[] y) => RoundnessMethod.OfPoints(x, y);

    public static ReferenceCircle[] All(this RoundnessResult result) =>
        [result.LeastSquares!, result.MinimumZone!, result.MinimumCircumscribed!, result.MaximumInscribed!];
}
