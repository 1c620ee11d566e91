using Handspun.Metrology.Runout;

namespace Handspun.Metrology.Roundness;

/// <summary>The reference circles of a Fourier series: samples all round, and the true summits and hollows beside each circle's control points.</summary>
/// <remarks>The exchange method of linear Chebyshev problems over an interval (Remez 1934): solve on a finite set, take in where the curve sticks out, solve again.</remarks>
internal static class SeriesCircles
{
    private const int Rounds = 12;

    /// <summary>The circles of a series of finite waves.</summary>
    public static RoundnessResult Of(ShaftProfile profile)
    {
        var steps = Math.Max(360, 24 * profile.Harmonics.Count);
        List<double> degrees = [.. Enumerable.Range(0, steps).Select(i => 360.0 * i / steps)];
        var eccentricity = profile.Harmonics.Count > 0 ? profile.Harmonics[0] : default;
        var leastSquares = (eccentricity.Cosine, eccentricity.Sine, profile.MeanMillimetres);   // orthogonal waves: the series is its own fit
        for (var round = 0; ; round++)
        {
            var circles = new TurnCircles(degrees.ToArray(), [.. degrees.Select(profile.At)]);
            var result = circles.Result(indexed: false, leastSquares);
            var before = degrees.Count;
            foreach (var circle in new[] { result.LeastSquares!, result.MinimumZone!, result.MinimumCircumscribed!, result.MaximumInscribed! })
            {
                foreach (var point in circle.Outer.Concat(circle.Inner))
                {
                    var summit = Summit(profile, circle, point.At.Degrees, 360.0 / steps);
                    if (degrees.TrueForAll(at => Math.Abs(at - summit) > 1e-7))
                    {
                        degrees.Add(summit);
                    }
                }
            }

            if (degrees.Count == before || round == Rounds)
            {
                return result;
            }
        }
    }

    // Newton's method on the slope of what is left about a circle, no farther than one sample.
    private static double Summit(ShaftProfile profile, ReferenceCircle circle, double degrees, double reach)
    {
        var at = degrees;
        for (var i = 0; i < 6; i++)
        {
            var (slope, bend) = (0.0, 0.0);
            for (var k = 1; k <= profile.Harmonics.Count; k++)
            {
                var (s, c) = Math.SinCos(k * at * Math.PI / 180);
                var (a, b) = (profile.Harmonics[k - 1].Cosine, profile.Harmonics[k - 1].Sine);
                (a, b) = k == 1 ? (a - circle.CentreX.Millimetres, b - circle.CentreY.Millimetres) : (a, b);
                slope += k * (b * c - a * s);
                bend -= k * k * (a * c + b * s);
            }

            if (bend == 0)
            {
                break;
            }

            at = Math.Clamp(at - slope / bend * 180 / Math.PI, degrees - reach, degrees + reach);
        }

        return at;
    }
}
