namespace Handspun.Simulation.Cams;

/// <summary>How a flank of a cam rises from the base circle to the nose.</summary>
public enum FlankLaw
{
    /// <summary>Simple harmonic: half a cosine wave.</summary>
    Harmonic,

    /// <summary>The 3-4-5 polynomial: 10x³ − 15x⁴ + 6x⁵, without a jump in acceleration.</summary>
    Polynomial,

    /// <summary>Cycloidal: x − sin(2πx)/2π.</summary>
    Cycloidal,
}
