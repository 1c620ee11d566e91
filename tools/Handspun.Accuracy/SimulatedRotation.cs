using Handspun.Metrology.Runout;
using Handspun.Simulation;

namespace Handspun.Accuracy;

/// <summary>Simulated captures of something that turns, as the methods take them.</summary>
internal static class SimulatedRotation
{
    /// <summary>The capture, with what was told of the angle.</summary>
    public static RotationCapture ToCapture(this SimulatedCapture simulated, double turnsPerIndex = 1) => new()
    {
        Seconds = simulated.Seconds,
        Millimetres = simulated.Millimetres,
        IndexSeconds = simulated.IndexSeconds,
        TurnsPerIndex = turnsPerIndex,
        MarkSeconds = simulated.MarkSeconds,
        EncoderSeconds = simulated.EncoderSeconds,
        EncoderDegrees = simulated.EncoderDegrees,
    };

    /// <summary>The capture of an aid; without pulses the turns between two are one.</summary>
    public static RotationCapture ToCapture(this SimulatedCapture simulated, AngleAid aid) =>
        simulated.ToCapture(aid.TurnsPerIndex > 0 ? aid.TurnsPerIndex : 1);
}
