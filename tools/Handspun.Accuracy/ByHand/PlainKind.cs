using Handspun.Simulation;
using Handspun.Simulation.PushPull;

namespace Handspun.Accuracy.ByHand;

/// <summary>One class of captures that need no angle: pushes and pulls, or rocks.</summary>
/// <param name="Name">What the table calls it.</param>
/// <param name="Draw">Makes the capture of a seed.</param>
/// <param name="Measure">What the method makes of it; null where it gives no answer.</param>
internal sealed record PlainKind(string Name, Func<int, DrawnPlainCapture> Draw, Func<DrawnPlainCapture, PlainAnswer?> Measure);

/// <summary>A capture and the gauge that it was drawn with.</summary>
internal sealed record DrawnPlainCapture(PlainCapture Capture, Indicator Indicator);

/// <summary>What a method found; lengths in millimetres.</summary>
internal readonly record struct PlainAnswer(double Millimetres, double U95Millimetres, int Cycles);

/// <summary>The draws of a seed.</summary>
internal static class PlainChance
{
    /// <summary>Seeds side by side would draw much alike, so they are spread out.</summary>
    public static Random Of(int seed) => new(unchecked((int)(2654435761 * (uint)seed)));

    /// <summary>Evenly between two bounds.</summary>
    public static double Between(this Random chance, double low, double high) => low + (high - low) * chance.NextDouble();

    /// <summary>Evenly in the logarithm between two bounds.</summary>
    public static double Spread(this Random chance, double low, double high) => low * Math.Pow(high / low, chance.NextDouble());
}
