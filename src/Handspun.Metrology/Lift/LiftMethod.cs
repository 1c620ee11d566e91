using Handspun.Metrology.Fitting;
using Handspun.Metrology.Runout;

namespace Handspun.Metrology.Lift;

/// <summary>The lift curve of a cam that a hand turns, from an indicator on the tappet or pushrod and whatever tells the angle.</summary>
/// <remarks>
/// Between the angles that are told the speed is not taken to be even: the lobe is the same on every turn and the angle is a
/// smooth curve of time, and both are found together, as for a runout. Lift is counted from the base circle opposite the
/// nose, its off-centre turning taken out.
/// </remarks>
public static class LiftMethod
{
    private const double FewestCamTurns = 0.99;

    /// <summary>Measures the lift. The same for a finished capture, a replayed one, and one that still goes on.</summary>
    public static LiftResult Measure(RotationCapture capture, GaugeTraits gauge, LiftSettings settings)
    {
        ArgumentNullException.ThrowIfNull(capture);
        ArgumentNullException.ThrowIfNull(gauge);
        ArgumentNullException.ThrowIfNull(settings);
        LiftResult Without(LiftStatus status, string missing) => new()
        {
            Status = status,
            Missing = missing,
            Readings = capture.Millimetres.Length,
            CheckingLift = settings.CheckingLift,
        };

        if ((LiftSettingsCheck.Fault(settings) ?? CaptureCheck.Fault(capture)) is { } fault)
        {
            return Without(LiftStatus.Rejected, fault);
        }

        var trace = LiftTrace.Of(capture, gauge.Resolution.Millimetres);
        if (trace.Seconds.Length < CaptureCheck.FewestReadings || trace.Seconds[^1] <= trace.Seconds[0] || trace.Range < 8 * trace.Noise)
        {
            return Without(LiftStatus.TooShort, "The readings do not move: with the plunger on the tappet or pushrod, turn by hand for two turns of the cam, which are four of the crank.");
        }

        if (AngleTold.Of(capture, settings.ZeroAtMark)?.WithEnds(trace.Seconds[0], trace.Seconds[^1]) is not { } told)
        {
            return Without(LiftStatus.NoAngle, "Nothing told the angle: fit an index or an encoder, or call the mark each time it passes, and capture again.");
        }

        var passes = LobePasses.Turns(trace.Seconds, trace.Millimetres, told.Anchors);
        var seen = LobePasses.Shaft(passes);
        if (settings.AngleOf != AngleShaft.NotSaid && seen != AngleShaft.NotSaid && seen != settings.AngleOf)
        {
            return Without(LiftStatus.Rejected, settings.AngleOf == AngleShaft.Crank
                ? "The lobe comes by once in each turn that was told, so the angle is of the cam and not of the crank: correct the setting, or the turns between index pulses."
                : "The lobe comes by once in two turns that were told, so the angle is of the crank and not of the cam: correct the setting, or the turns between index pulses.");
        }

        var shaft = settings.AngleOf != AngleShaft.NotSaid ? settings.AngleOf : seen != AngleShaft.NotSaid ? seen : AngleShaft.Crank;
        var scale = shaft == AngleShaft.Crank ? 0.5 : 1;   // exact: one turn of the cam is two of the crank
        AngleAnchor[] anchors = [.. told.Anchors.Select(anchor => anchor with { Turns = anchor.Turns * scale, Doubt = anchor.Doubt * scale })];
        var basis = new AngleBasis(told, shaft, scale, settings.AngleOf == AngleShaft.NotSaid && seen == AngleShaft.NotSaid);
        if (basis.IsOnceATurn && anchors[^1].Turns - anchors[0].Turns >= FewestCamTurns)
        {
            // Before the first and after the last of so few angles the shaft may as well have stood.
            trace = LiftTrace.Between(trace, anchors[0].Seconds, anchors[^1].Seconds);
        }

        var fit = LiftFit.Of(trace, anchors);
        if (!fit.IsFinite || fit.TurnsSeen < FewestCamTurns)
        {
            var turns = double.IsFinite(fit.TurnsSeen) ? Math.Min(fit.TurnsSeen, 0.95) : 0;
            return Without(LiftStatus.TooShort, $"About {turns:0.0} of a turn of the cam was seen: turn on the same way until at least one whole turn of the cam, two of the crank, is through.") with { CamTurns = turns, AngleOf = shaft };
        }

        var highest = ProfileExtremes.Of(fit.Series, fit.Harmonics).HighTurns;
        if (BaseCircle.Find(fit.Turns, trace, highest, basis.IsOnceATurn) is not { } circle)
        {
            return Without(LiftStatus.NoBaseCircle, "The readings never rest opposite the lobe: set the plunger so that it also touches on the base circle, see that the lifter does not leak down, and capture again.") with { CamTurns = fit.TurnsSeen, AngleOf = shaft };
        }

        return LiftAnswer.Of(capture, gauge, settings, trace, fit, circle, highest, basis);
    }
}
