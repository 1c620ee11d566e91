using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;
using Handspun.Simulation;
using Handspun.Simulation.Cams;

namespace Handspun.Capture.Tests.Methods.Lift;

/// <summary>A cam whose crank an uneven hand turns, with a toothed disc on the crank.</summary>
internal static class TurnedCam
{
    public const double CentreDegrees = 140;   // of the cam

    public static GaugeTraits Gauge { get; } = new() { Resolution = Length.FromMillimetres(0.001) };

    public static CamLobe Lobe { get; } = new() { LiftMillimetres = 9, CentrelineDegrees = CentreDegrees };

    /// <summary>The capture.</summary>
    /// <param name="fromTurns">Where the crank stands at the start, in turns from the disc's zero.</param>
    /// <param name="teeth">Teeth of the disc; 0 for no disc.</param>
    /// <param name="missing">Whether its last tooth is missing.</param>
    /// <param name="marks">Whether somebody calls the mark at zero.</param>
    public static RotationCapture Of(double fromTurns, int teeth, bool missing = false, bool marks = false)
    {
        const double hertz = 50;
        var hand = HandTurn.Create(7, 6, 0.4);
        var noise = new Random(3);
        List<double> seconds = [], millimetres = [], pulses = [], called = [];
        var (tooth, turn) = (Math.Floor(fromTurns * Math.Max(1, teeth)), Math.Floor(fromTurns));
        for (var i = 0; i <= hand.Seconds * 1000; i++)
        {
            var (at, turns) = (i / 1000.0, fromTurns + hand.TurnsAt(i / 1000.0));
            if (teeth > 0 && Math.Floor(turns * teeth) > tooth)
            {
                tooth = Math.Floor(turns * teeth);
                if (!missing || tooth % teeth != teeth - 1)
                {
                    pulses.Add(at);
                }
            }

            if (marks && Math.Floor(turns) > turn)
            {
                turn = Math.Floor(turns);
                called.Add(at);
            }

            if (i % (1000 / (int)hertz) == 0)
            {
                seconds.Add(at);
                millimetres.Add(Math.Round(0.3 + Lobe.HeightAt(180 * turns) + 0.0005 * (noise.NextDouble() - 0.5), 3));
            }
        }

        return new RotationCapture { Seconds = seconds.ToArray(), Millimetres = millimetres.ToArray(), IndexSeconds = pulses.ToArray(), MarkSeconds = called.ToArray() };
    }
}
