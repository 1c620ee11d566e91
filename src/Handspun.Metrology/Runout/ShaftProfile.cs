namespace Handspun.Metrology.Runout;

/// <summary>One wave of a shaft's profile: so many lobes a turn.</summary>
/// <param name="Cosine">The part in phase with the reference, in millimetres.</param>
/// <param name="Sine">The part a quarter wave after it, in millimetres.</param>
public readonly record struct Harmonic(double Cosine, double Sine)
{
    /// <summary>Half the full movement that this wave makes, in millimetres.</summary>
    public double Amplitude => Math.Sqrt(Cosine * Cosine + Sine * Sine);
}

/// <summary>The shape of a shaft under the indicator over one turn, as a short Fourier series in the angle.</summary>
/// <param name="MeanMillimetres">The level about which the shaft moves, in millimetres.</param>
/// <param name="Harmonics">The waves; the first has one lobe a turn and is the eccentricity.</param>
public sealed record ShaftProfile(double MeanMillimetres, IReadOnlyList<Harmonic> Harmonics)
{
    /// <summary>The height at an angle in degrees from the reference, in millimetres.</summary>
    public double At(double degrees)
    {
        var angle = degrees * Math.PI / 180;
        var height = MeanMillimetres;
        for (var k = 0; k < Harmonics.Count; k++)
        {
            var (sine, cosine) = Math.SinCos((k + 1) * angle);
            height += Harmonics[k].Cosine * cosine + Harmonics[k].Sine * sine;
        }

        return height;
    }
}
