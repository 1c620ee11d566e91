using Handspun.Jobs.Limits;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Points.Catalogue;

/// <summary>Runout of both shaft ends.</summary>
public static class RunoutPoints
{
    /// <summary>Runout of the pinion shaft: the gate of every job in the cam chest.</summary>
    /// <remarks>
    /// Common practice, no source: about 0.003 in is a good shaft and 0.013 in is not. The limit stands between the two,
    /// nearer to the good one.
    /// </remarks>
    public static MeasuringPoint Pinion { get; } = new()
    {
        Code = "pinion-runout",
        Title = "Pinion shaft runout",
        Kind = PointKind.Runout,
        How = "Clamp the stand to the engine, never to the frame or the lift. Set the plunger on the machined bearing surface, square to the shaft, with about a millimetre of travel in hand. Then turn the rear wheel in top gear.",
        ShippedLimit = new Limit
        {
            UpperMillimetres = Length.FromInches(0.005).Millimetres,
            Source = "common practice, no source: look it up in the machine's service manual",
        },
    };

    /// <summary>Runout of the shaft's other end. What is allowed there differs from engine to engine, so no limit comes with it.</summary>
    public static MeasuringPoint DriveSide { get; } = new()
    {
        Code = "drive-side-runout",
        Title = "Drive-side shaft runout",
        Kind = PointKind.Runout,
        How = "Clamp the stand to the engine. Set the plunger on a ground part of the shaft outside its bearing, not on splines, threads or a key, with about a millimetre of travel in hand, on the same side of the crank as at the pinion. Count the angle from the same mark.",
        Cautions =
        [
            "The primary cover is off: keep hands and sleeves out of the primary chain or belt and the clutch while the crank turns.",
        ],
    };

    /// <summary>Both.</summary>
    public static IReadOnlyList<MeasuringPoint> All { get; } = [Pinion, DriveSide];
}
