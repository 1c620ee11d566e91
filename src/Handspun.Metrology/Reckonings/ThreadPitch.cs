using System.Globalization;
using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Reckonings;

/// <summary>How far a thread moves in one turn.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="PerTurn">Movement in one turn of a thread with one start; above zero.</param>
public sealed record ThreadPitch(string Name, Length PerTurn)
{
    /// <summary>Unified threads that adjusters have: ASME B1.1, coarse and fine series.</summary>
    public static IReadOnlyList<ThreadPitch> Unified { get; } =
    [
        Of("#10-24", 24), Of("#10-32", 32), Of("1/4-20", 20), Of("1/4-28", 28), Of("5/16-18", 18), Of("5/16-24", 24), Of("3/8-16", 16), Of("3/8-24", 24),
    ];

    /// <summary>A thread with so many turns to the inch.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not between 4 and 80.</exception>
    public static ThreadPitch FromThreadsPerInch(double threads) => threads is >= 4 and <= 80
        ? Of(string.Create(CultureInfo.InvariantCulture, $"{threads:0.##} threads per inch"), threads)
        : throw new ArgumentOutOfRangeException(nameof(threads), threads, "A thread has 4 to 80 turns to the inch: count them over half an inch and double.");

    private static ThreadPitch Of(string name, double threads) => new(name, Length.FromInches(1 / threads));
}
