using Handspun.Jobs.Points;
using Handspun.Metrology.Lift;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;

namespace Handspun.Capture.Methods.Lift;

/// <summary>What a point's setup asks of the method: the same live, replayed and analyzed.</summary>
public static class LiftAsked
{
    /// <summary>The method's settings.</summary>
    /// <param name="setup">What was said of the point; null where nothing was.</param>
    public static LiftSettings Settings(LiftSetup? setup) => new()
    {
        AngleOf = setup?.AngleOf switch { "crank" => AngleShaft.Crank, "cam" => AngleShaft.Cam, _ => AngleShaft.NotSaid },
        CheckingLift = setup?.CheckingLiftMillimetres is { } lift ? Length.FromMillimetres(lift) : LiftSettings.UsualCheckingLift,
        RockerRatio = setup?.RockerRatio,
        RockerRatioU95 = setup?.RockerRatioU95 ?? 0,
        ZeroAtMark = setup?.PulsesPerTurn is not (null or 1) && !setup.MissingTooth,
    };

    /// <summary>The readings, with the pulses as the setup says they come.</summary>
    public static RotationCapture Readings(RotationCapture readings, LiftSetup? setup)
    {
        if (setup?.PulsesPerTurn is not { } pulses)
        {
            return readings;
        }

        var told = readings with { TurnsPerIndex = 1 / pulses };
        return setup.MissingTooth ? MissingTooth.Filled(told, (int)pulses) : told;
    }
}
