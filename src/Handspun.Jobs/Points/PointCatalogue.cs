using Handspun.Jobs.Points.Catalogue;

namespace Handspun.Jobs.Points;

/// <summary>The points that a job can take.</summary>
public static class PointCatalogue
{
    /// <summary>All of them, in the order in which a cam chest is gone through.</summary>
    public static IReadOnlyList<MeasuringPoint> All { get; } =
        [.. RunoutPoints.All, .. EndPlayPoints.All, .. BorePoints.All, .. BodyPoints.All, .. ClearancePoints.All, .. LiftPoints.All, .. TimingPoints.All, .. HandPoints.All];

    /// <summary>What a job takes when nobody chooses: the runout of both shaft ends.</summary>
    public static IReadOnlyList<MeasuringPoint> Usual { get; } = RunoutPoints.All;

    /// <summary>The point of that name; null where there is none.</summary>
    public static MeasuringPoint? Find(string? code) => All.FirstOrDefault(point => point.Code == code);
}
