using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Bore;

/// <summary>A bore's size at one depth and one direction across it.</summary>
/// <param name="Depth">How deep, from the mouth; zero or more.</param>
/// <param name="ClockHours">Which way across, as on a clock face looked at from the mouth: 0 ≤ hours &lt; 6, for a bore is as wide at 1 as at 7 o'clock.</param>
/// <param name="Size">The size there, or the deviation from one setting that all places share.</param>
/// <param name="OwnU95">Its expanded uncertainty (k = 2) without what all places share: without the setting's.</param>
public sealed record BorePlace(Length Depth, double ClockHours, Length Size, Length OwnU95);

/// <summary>What a bore's sizes at several depths and directions say together; what was not measured is null.</summary>
/// <param name="Size">Mean of the depths' mean sizes.</param>
/// <param name="SizeU95">Its expanded uncertainty (k = 2), the setting's included.</param>
/// <param name="Smallest">The smallest place.</param>
/// <param name="Largest">The largest place.</param>
/// <param name="Taper">Mean size at the deepest place less that at the shallowest; positive where the bore widens downward. Null with one depth.</param>
/// <param name="TaperU95">Its expanded uncertainty (k = 2).</param>
/// <param name="OutOfRound">Largest less smallest size at one depth, at the depth where that is most. Null where no depth has two directions.</param>
/// <param name="OutOfRoundU95">Its expanded uncertainty (k = 2).</param>
/// <param name="Sentence">What was found, in plain words.</param>
public sealed record BoreForm(
    Length Size, Length SizeU95, BorePlace Smallest, BorePlace Largest, Length? Taper, Length? TaperU95, Length? OutOfRound, Length? OutOfRoundU95, string Sentence);

/// <summary>Size, taper and out-of-round of a bore.</summary>
public static class BoreSurvey
{
    /// <summary>Puts the places together.</summary>
    /// <remarks>
    /// What all places share, the setting's size, shifts them all alike: it is in the size's uncertainty and falls out of the
    /// differences (JCGM 100:2008, 5.2, full correlation). A two-point gauge does not see three lobes or five.
    /// </remarks>
    /// <param name="places">The places. At least one.</param>
    /// <param name="sharedU95">Expanded uncertainty (k = 2) of what all share.</param>
    /// <exception cref="ArgumentException">There is no place, or a depth or an uncertainty is negative.</exception>
    public static BoreForm Of(IReadOnlyList<BorePlace> places, Length sharedU95)
    {
        ArgumentNullException.ThrowIfNull(places);
        if (places.Count == 0)
        {
            throw new ArgumentException("A bore is surveyed at one place at least.", nameof(places));
        }

        if (sharedU95 < Length.Zero || places.Any(place => place.Depth < Length.Zero || place.OwnU95 < Length.Zero))
        {
            throw new ArgumentException("Depths and uncertainties are zero or more.", nameof(places));
        }

        var depths = places.GroupBy(place => place.Depth).OrderBy(depth => depth.Key).Select(MeanOf).ToArray();
        var size = depths.Average(depth => depth.Millimetres);
        var own = Math.Sqrt(depths.Sum(depth => depth.U95 * depth.U95)) / depths.Length;
        var (taper, taperU95) = depths.Length < 2
            ? ((double?)null, (double?)null)
            : (depths[^1].Millimetres - depths[0].Millimetres, Math.Sqrt(depths[^1].U95 * depths[^1].U95 + depths[0].U95 * depths[0].U95));
        var (round, roundU95) = OutOfRound(places);
        return new(
            Length.FromMillimetres(size),
            Length.FromMillimetres(Math.Sqrt(own * own + sharedU95.Millimetres * sharedU95.Millimetres)),
            places.MinBy(place => place.Size)!,
            places.MaxBy(place => place.Size)!,
            LengthOf(taper),
            LengthOf(taperU95),
            LengthOf(round),
            LengthOf(roundU95),
            Sentence(taper, taperU95, round, roundU95));
    }

    private static (double Millimetres, double U95) MeanOf(IGrouping<Length, BorePlace> depth)
    {
        var count = depth.Count();
        return (depth.Average(place => place.Size.Millimetres), Math.Sqrt(depth.Sum(place => Math.Pow(place.OwnU95.Millimetres, 2))) / count);
    }

    private static (double? Movement, double? U95) OutOfRound(IReadOnlyList<BorePlace> places)
    {
        var (most, doubt) = ((double?)null, (double?)null);
        foreach (var depth in places.GroupBy(place => place.Depth).Where(depth => depth.Count() > 1))
        {
            var (wide, narrow) = (depth.MaxBy(place => place.Size)!, depth.MinBy(place => place.Size)!);
            if (most is null || wide.Size.Millimetres - narrow.Size.Millimetres > most)
            {
                most = wide.Size.Millimetres - narrow.Size.Millimetres;
                doubt = Math.Sqrt(Math.Pow(wide.OwnU95.Millimetres, 2) + Math.Pow(narrow.OwnU95.Millimetres, 2));
            }
        }

        return (most, doubt);
    }

    private static string Sentence(double? taper, double? taperU95, double? round, double? roundU95)
    {
        string[] parts =
        [
            taper is null ? "Measured at one depth, so its taper is not known"
                : Math.Abs(taper.Value) <= taperU95 ? "No taper beyond what the measurement can tell"
                : taper > 0 ? "The bore widens downward" : "The bore narrows downward",
            round is null ? "measured one way across, so its out-of-round is not known"
                : round <= roundU95 ? "no out-of-round beyond what the measurement can tell"
                : "it is out of round",
        ];
        return string.Join("; ", parts) + ".";
    }

    private static Length? LengthOf(double? millimetres) => millimetres is { } value ? Length.FromMillimetres(value) : null;
}
