namespace Handspun.Simulation;

/// <summary>Random draws that a seed repeats.</summary>
internal static class Chance
{
    /// <summary>A draw from the standard normal distribution (Box and Muller).</summary>
    public static double NextNormal(this Random chance) =>
        Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());

    /// <summary>A draw evenly spread between two bounds.</summary>
    public static double NextBetween(this Random chance, double low, double high) => low + (high - low) * chance.NextDouble();
}
