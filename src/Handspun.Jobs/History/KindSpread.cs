using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.History;

/// <summary>How one point came out on the shop's other bikes of a kind, and where this bike's result lies among them.</summary>
/// <remarks>One result a bike, the one that counts in its newest job; the bike itself is left out.</remarks>
public sealed record KindSpread
{
    /// <summary>With fewer other bikes nothing is said.</summary>
    public const int FewestBikes = 5;

    private KindSpread(Length result, double[] rising) => (Result, RisingMillimetres) = (result, rising);

    /// <summary>This bike's result.</summary>
    public Length Result { get; }

    /// <summary>The others' results in millimetres, rising.</summary>
    public IReadOnlyList<double> RisingMillimetres { get; }

    /// <summary>How many other bikes there are, <see cref="FewestBikes"/> or more.</summary>
    public int Bikes => RisingMillimetres.Count;

    /// <summary>A quarter of the others lie at or below it.</summary>
    public Length LowerQuartile => Quantile(0.25);

    /// <summary>Half of the others lie at or below it.</summary>
    public Length Median => Quantile(0.5);

    /// <summary>Three quarters of the others lie at or below it.</summary>
    public Length UpperQuartile => Quantile(0.75);

    /// <summary>How many of the others lie below this bike's result.</summary>
    public int Below => RisingMillimetres.Count(value => value < Result.Millimetres);

    /// <summary>How many of the others lie above it.</summary>
    public int Above => RisingMillimetres.Count(value => value > Result.Millimetres);

    /// <summary>That of a result; null where there are too few other bikes to say anything.</summary>
    /// <param name="result">This bike's result.</param>
    /// <param name="othersMillimetres">One result of each other bike, in any order.</param>
    public static KindSpread? Of(Length result, IEnumerable<double> othersMillimetres) =>
        othersMillimetres.Order().ToArray() is { Length: >= FewestBikes } rising ? new(result, rising) : null;

    // Straight between neighbours, the first and last being the ends: definition 7 of Hyndman and Fan (1996), from memory.
    private Length Quantile(double share)
    {
        var place = share * (Bikes - 1);
        var below = (int)place;
        var above = Math.Min(below + 1, Bikes - 1);
        return Length.FromMillimetres(RisingMillimetres[below] + (place - below) * (RisingMillimetres[above] - RisingMillimetres[below]));
    }
}
