using Handspun.Jobs.Limits;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Points;

/// <summary>What is measured on a bike, in general: the kind of point that a job takes over when it is opened.</summary>
/// <param name="Code">Its name in data and topics: lower-case letters, digits and hyphens.</param>
/// <param name="Title">Its name on screens.</param>
/// <param name="How">How to set the gauge up, in a sentence or two.</param>
/// <param name="ShippedLimit">The limit that a new job starts with; unconfirmed until the shop confirms it.</param>
public sealed record MeasuringPoint(string Code, string Title, string How, Limit ShippedLimit)
{
    /// <summary>Runout of the pinion shaft: the gate of every job in the cam chest.</summary>
    /// <remarks>
    /// Common practice, no source: about 0.003 in is a good shaft and 0.013 in is not. The limit stands between the two,
    /// nearer to the good one.
    /// </remarks>
    public static MeasuringPoint PinionRunout { get; } = new(
        "pinion-runout",
        "Pinion shaft runout",
        "Clamp the stand to the engine, never to the frame or the lift. Set the plunger on the machined bearing surface, square to the shaft, with about a millimetre of travel in hand. Then turn the rear wheel in top gear.",
        new Limit
        {
            UpperMillimetres = Length.FromInches(0.005).Millimetres,
            Source = "common practice, no source: look it up in the machine's service manual",
        });

    /// <summary>Every kind of point.</summary>
    public static IReadOnlyList<MeasuringPoint> All { get; } = [PinionRunout];
}
