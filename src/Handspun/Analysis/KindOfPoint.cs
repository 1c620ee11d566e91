using Handspun.Jobs.Points;

namespace Handspun.Analysis;

/// <summary>Finds how the point that a file names is measured.</summary>
internal static class KindOfPoint
{
    /// <summary>The kind of a point's code: that of the catalogue, and for a shop's own point what its name says; a runout where nothing says otherwise.</summary>
    public static PointKind Of(string? code) => PointCatalogue.Find(code)?.Kind ?? code switch
    {
        null => PointKind.Runout,
        _ when code.EndsWith("-end-play", StringComparison.Ordinal) => PointKind.EndPlay,
        _ when $"{code}-".Contains("-bore-", StringComparison.Ordinal) => PointKind.Bore,
        _ when $"-{code}-".Contains("-body-", StringComparison.Ordinal) => PointKind.OutsideSize,
        _ when $"-{code}-".Contains("-lift-", StringComparison.Ordinal) => PointKind.LiftCurve,
        _ => PointKind.Runout,
    };
}
