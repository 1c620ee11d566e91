namespace Handspun.Metrology.Runout;

/// <summary>The highest and the lowest place of a Fourier series over one turn.</summary>
/// <param name="HighTurns">Where it is highest, 0 ≤ a &lt; 1 turn.</param>
/// <param name="LowTurns">Where it is lowest, 0 ≤ a &lt; 1 turn.</param>
/// <param name="Movement">Height between the two.</param>
internal readonly record struct ProfileExtremes(double HighTurns, double LowTurns, double Movement)
{
    /// <summary>Finds both: a scan that no lobe slips through, then Newton's method on the slope.</summary>
    /// <param name="series">Mean, then cosine and sine of each wave; what follows the waves is not read.</param>
    /// <param name="harmonics">How many waves.</param>
    /// <param name="from">The first wave that counts, from 1; 2 leaves the eccentricity out.</param>
    public static ProfileExtremes Of(ReadOnlySpan<double> series, int harmonics, int from = 1)
    {
        var steps = 36 * Math.Max(harmonics, 2);
        var heights = new double[steps];
        for (var i = 0; i < steps; i++)
        {
            heights[i] = At(series, harmonics, from, (double)i / steps).Height;
        }

        // Two peaks may be nearly alike, and the scan's best need not be the higher one: each is followed to its top.
        var (high, low) = (0.0, 0.0);
        var (top, bottom) = (double.MinValue, double.MaxValue);
        for (var i = 0; i < steps; i++)
        {
            var (before, here, after) = (heights[(i + steps - 1) % steps], heights[i], heights[(i + 1) % steps]);
            if ((here >= before && here >= after) || (here <= before && here <= after))
            {
                var at = Refine(series, harmonics, from, (double)i / steps, steps);
                var height = At(series, harmonics, from, at).Height;
                (high, top) = height > top ? (at, height) : (high, top);
                (low, bottom) = height < bottom ? (at, height) : (low, bottom);
            }
        }

        return new(high - Math.Floor(high), low - Math.Floor(low), top >= bottom ? top - bottom : 0);
    }

    /// <summary>Height, slope and bend (per turn) at an angle in turns.</summary>
    public static (double Height, double Slope, double Bend) At(ReadOnlySpan<double> series, int harmonics, int from, double turns)
    {
        var (height, slope, bend) = (0.0, 0.0, 0.0);
        for (var k = from; k <= harmonics; k++)
        {
            var w = 2 * Math.PI * k;
            var (s, c) = Math.SinCos(w * turns);
            var (a, b) = (series[2 * k - 1], series[2 * k]);
            height += a * c + b * s;
            slope += w * (b * c - a * s);
            bend -= w * w * (a * c + b * s);
        }

        return (height, slope, bend);
    }

    private static double Refine(ReadOnlySpan<double> series, int harmonics, int from, double at, int steps)
    {
        var centre = at;
        for (var i = 0; i < 8; i++)
        {
            var (_, slope, bend) = At(series, harmonics, from, at);
            if (bend == 0)
            {
                break;
            }

            at = Math.Clamp(at - slope / bend, centre - 1.0 / steps, centre + 1.0 / steps);
        }

        return at;
    }
}
