namespace Handspun.Accuracy;

/// <summary>The draws of a seed.</summary>
internal static class Draws
{
    /// <summary>Seeds side by side would draw much alike, so they are spread out.</summary>
    public static Random Of(int seed) => new(unchecked((int)(2654435761 * (uint)seed)));

    /// <summary>Evenly between two bounds.</summary>
    public static double Between(this Random chance, double low, double high) => low + (high - low) * chance.NextDouble();

    /// <summary>Evenly in the logarithm between two bounds.</summary>
    public static double Spread(this Random chance, double low, double high) => low * Math.Pow(high / low, chance.NextDouble());
}
