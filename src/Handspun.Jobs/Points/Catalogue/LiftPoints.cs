namespace Handspun.Jobs.Points.Catalogue;

/// <summary>What the cam does at each lifter. It is held against the cam's own card, so no limit comes with it.</summary>
internal static class LiftPoints
{
    public static IReadOnlyList<MeasuringPoint> All { get; } =
    [
        .. Cylinders.Each((code, title) => new MeasuringPoint
        {
            Code = $"cam-lift-{code}",
            Title = $"Cam lift, {title}",
            Kind = PointKind.LiftCurve,
            How = "Set the plunger on the lifter or the pushrod, in line with its movement, with more travel in hand than the cam lifts. Note where the index or the mark stands against top dead centre, then turn the engine by hand until the cam has gone round twice.",
            Cautions = ["Valve springs push back: keep fingers out of the rockers, and take the load off slowly."],
        }),
    ];
}
