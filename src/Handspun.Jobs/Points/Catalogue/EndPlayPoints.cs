namespace Handspun.Jobs.Points.Catalogue;

/// <summary>End play of cam and crank. What is allowed depends on the engine and its shims, so no limit comes with them.</summary>
internal static class EndPlayPoints
{
    public static IReadOnlyList<MeasuringPoint> All { get; } =
    [
        new()
        {
            Code = "cam-end-play",
            Title = "Cam end play",
            Kind = PointKind.EndPlay,
            How = "Set the plunger on the end of the cam, in line with it, with about a millimetre of travel in hand. Push the cam to its stop, hold it for half a second or more, pull it to the other stop, hold it; three times or more.",
            Cautions = ["Keep fingers out of the gears and the chain; move the cam by hand, never with a lever against a bearing."],
        },
        new()
        {
            Code = "crank-end-play",
            Title = "Crank end play",
            Kind = PointKind.EndPlay,
            How = "Set the plunger on the end of the shaft, in line with it, with about a millimetre of travel in hand. Push the crank to its stop, hold it for half a second or more, pull it to the other stop, hold it; three times or more.",
            Cautions = ["Move the crank by hand at its end; a hammer or a lever against the flywheels can shift them."],
        },
    ];
}
