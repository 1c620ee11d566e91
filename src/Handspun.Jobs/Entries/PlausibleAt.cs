using Handspun.Jobs.Points;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Entries;

/// <summary>What a length at a point may be, to catch the wrong unit, and what to call it in a sentence.</summary>
/// <remarks>The bounds are far outside what such engines have (from memory): they catch wrong units, not worn parts.</remarks>
/// <param name="What">Such as <c>a lifter bore</c>.</param>
/// <param name="Bounds">From the least to the most.</param>
public readonly record struct PlausibleAt(string What, PlausibleLength Bounds)
{
    /// <summary>For a point: its own where the catalogue has one, else that of its kind.</summary>
    public static PlausibleAt Of(string code, PointKind kind) => PointCatalogue.Find(code)?.Plausible ?? Of(kind);

    /// <summary>From so many millimetres to so many.</summary>
    internal static PlausibleAt Between(string what, double least, double most) =>
        new(what, new PlausibleLength(Length.FromMillimetres(least), Length.FromMillimetres(most)));

    private static PlausibleAt Of(PointKind kind) => kind switch
    {
        PointKind.Runout => Between("a runout", 0.0005, 2),
        PointKind.EndPlay => Between("an end play", 0.0005, 3),
        PointKind.Bore => Between("a bore", 3, 150),
        PointKind.OutsideSize => Between("a shaft or a body", 3, 150),
        PointKind.LiftCurve => Between("a cam's lift", 2, 20),
        _ => Between("a gap or a thickness", 0.01, 150),
    };
}
