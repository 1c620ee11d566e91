namespace Handspun.Simulation;

/// <summary>One wave of a simulated shaft: so many lobes a turn.</summary>
/// <param name="Lobes">Lobes a turn, at least 1; one lobe is an off-centre shaft.</param>
/// <param name="Millimetres">Amplitude, half the full movement.</param>
/// <param name="PhaseDegrees">Where the first lobe of this wave is highest is this divided by the lobes, in degrees of the shaft.</param>
public readonly record struct ShaftWave(int Lobes, double Millimetres, double PhaseDegrees);

/// <summary>A narrow place on a simulated shaft that stands out of its shape: a burr, a scratch, a keyway.</summary>
/// <param name="AtDegrees">Its middle.</param>
/// <param name="WidthDegrees">From where it begins to where it ends; its flanks are half a cosine each.</param>
/// <param name="Millimetres">Its height; below zero where it is sunk.</param>
public readonly record struct ShaftFault(double AtDegrees, double WidthDegrees, double Millimetres)
{
    /// <summary>What it adds at an angle, in millimetres.</summary>
    public double HeightAt(double degrees)
    {
        var off = degrees - AtDegrees;
        off -= 360 * Math.Round(off / 360);
        return Math.Abs(off) >= WidthDegrees / 2 ? 0 : Millimetres * (1 + Math.Cos(2 * Math.PI * off / WidthDegrees)) / 2;
    }
}

/// <summary>The true shape of a simulated shaft under the indicator.</summary>
public sealed class ShaftShape
{
    private readonly ShaftWave[] _waves;

    /// <summary>A shaft made of these waves.</summary>
    public ShaftShape(IEnumerable<ShaftWave> waves)
    {
        _waves = [.. waves];
        HighSpotDegrees = Extreme(sign: 1);
        LowSpotDegrees = Extreme(sign: -1);
        TirMillimetres = WavesAt(HighSpotDegrees) - WavesAt(LowSpotDegrees);
    }

    /// <summary>The same shaft with narrow places that stand out of its shape; runout and high spot stay those of the waves.</summary>
    public ShaftShape With(params ShaftFault[] faults) => new(_waves) { Faults = faults };

    /// <summary>The narrow places that stand out.</summary>
    public IReadOnlyList<ShaftFault> Faults { get; private init; } = [];

    /// <summary>The waves that make up the shape.</summary>
    public IReadOnlyList<ShaftWave> Waves => _waves;

    /// <summary>The full indicator movement over one turn, in millimetres.</summary>
    public double TirMillimetres { get; }

    /// <summary>Where the shaft is highest, 0 ≤ a &lt; 360.</summary>
    public double HighSpotDegrees { get; }

    /// <summary>Where the shaft is lowest, 0 ≤ a &lt; 360.</summary>
    public double LowSpotDegrees { get; }

    /// <summary>A random shape, chiefly off-centre, with exactly this runout.</summary>
    /// <param name="tirMillimetres">The runout it is to have.</param>
    /// <param name="seed">The same seed gives the same shape.</param>
    /// <param name="harmonics">How many waves, from one lobe up.</param>
    public static ShaftShape WithTir(double tirMillimetres, int seed, int harmonics)
    {
        var chance = new Random(seed);
        var unscaled = new ShaftWave[harmonics];
        for (var k = 1; k <= harmonics; k++)
        {
            var amplitude = k == 1 ? 1 : (0.05 + 0.4 * chance.NextDouble()) / (k - 0.5);
            unscaled[k - 1] = new(k, amplitude, 360 * chance.NextDouble());
        }

        var scale = tirMillimetres / new ShaftShape(unscaled).TirMillimetres;
        return new(unscaled.Select(wave => wave with { Millimetres = wave.Millimetres * scale }));
    }

    /// <summary>The height at an angle of the shaft in degrees, in millimetres about a mean of zero, its faults included.</summary>
    public double HeightAt(double degrees)
    {
        var height = WavesAt(degrees);
        foreach (var fault in Faults)
        {
            height += fault.HeightAt(degrees);
        }

        return height;
    }

    private double WavesAt(double degrees)
    {
        var height = 0.0;
        foreach (var wave in _waves)
        {
            height += wave.Millimetres * Math.Cos((wave.Lobes * degrees - wave.PhaseDegrees) * Math.PI / 180);
        }

        return height;
    }

    private double Extreme(int sign)
    {
        const double step = 0.25;
        var best = 0.0;
        for (var degrees = 0.0; degrees < 360; degrees += step)
        {
            best = sign * WavesAt(degrees) > sign * WavesAt(best) ? degrees : best;
        }

        // The scan brackets the peak, so a ternary search may narrow it.
        var (low, high) = (best - step, best + step);
        for (var i = 0; i < 60; i++)
        {
            var third = (high - low) / 3;
            (low, high) = sign * WavesAt(low + third) < sign * WavesAt(high - third) ? (low + third, high) : (low, high - third);
        }

        var degree = (low + high) / 2;
        return degree - 360 * Math.Floor(degree / 360);
    }
}
