using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout.Faults;

namespace Handspun.Metrology.Runout;

/// <summary>Puts what was found into a result.</summary>
internal static class RunoutAnswer
{
    /// <summary>Turns below which the whole shaft was not seen; the last hundredth is within the doubt of the angle.</summary>
    public const double FewestTurns = 0.99;

    private const double MostLoss = 0.01;
    private const double LastSeconds = 0.4;
    private const double ManyRejectedShare = 0.05;
    private const double MostTurnedBack = 15.0 / 360;   // a hand that lets go slips back a few degrees

    /// <summary>The answer when no whole turn was seen.</summary>
    /// <param name="capture">The capture.</param>
    /// <param name="trace">What of it moves.</param>
    /// <param name="turns">Turns that were seen, roughly; 1 or more where the readings rise and fall and nothing repeats.</param>
    public static RunoutResult TooShort(RotationCapture capture, Trace trace, double turns)
    {
        const double most = 0.95;
        var seen = Math.Min(turns, most);
        var length = trace.Seconds.Length > 1 ? trace.Seconds[^1] - trace.Seconds[0] : 0;
        return new()
        {
            Status = RunoutStatus.TooShort,
            Readings = capture.Seconds.Length,
            Turns = seen,
            TurnsPerSecond = seen > 0 && length > 0 && !Stands(capture, trace) ? seen / length : 0,
            Rejected = trace.Rejected,
            Missing = turns switch
            {
                0 => "The readings do not move: with the plunger on the shaft, turn it by hand at least one whole turn.",
                < 1.3 => $"About {seen:0.0} of a turn was seen: keep turning the same way until at least one whole turn is through.",
                _ => "The readings rise and fall, but no whole turn comes back: check that the stand is tight, and turn one way for two turns or more.",
            },
        };
    }

    /// <summary>The answer when at least one whole turn was seen.</summary>
    /// <param name="capture">The capture.</param>
    /// <param name="gauge">The gauge.</param>
    /// <param name="settings">What was asked for.</param>
    /// <param name="trace">What of the capture moves.</param>
    /// <param name="fit">The shaft.</param>
    /// <param name="found">What stands out of it.</param>
    /// <param name="known">The runout of the first turns by themselves, where an earlier look has them.</param>
    public static RunoutResult Measured(
        RotationCapture capture, GaugeTraits gauge, RunoutSettings settings, Trace trace, ProfileFit fit, IReadOnlyList<FoundFault> found, IReadOnlyList<double> known)
    {
        var (reference, zero) = AngleZero.Of(capture, fit);
        var profile = Profile(fit, zero);
        var extremes = ProfileExtremes.Of(fit.Series, fit.Harmonics);
        LocalFault[] faults = [.. found.Select(one => one.From(zero)).OrderBy(fault => fault.At.Degrees)];
        var byTurn = TurnByTurn.Runouts(trace, fit, Math.Max(0.2 * trace.Resolution, 1e-6), known);
        var doubt = FitDoubt.Of(fit, extremes);
        var widening = LeftOut.Widening(fit.Weights);
        var budget = RunoutBudget.For(extremes.Movement, doubt.Runout * widening, doubt.Rounding, fit.Sigma, trace.Resolution, gauge);
        var rhythm = reference == AngleReference.Encoder ? default : RhythmDoubt.Of(trace, fit);
        var zeroDoubt = ZeroDoubt.Turns(capture, reference, fit, zero, rhythm.Turns);
        var eccentricity = EccentricityDoubt.Of(fit, widening, rhythm.Millimetres, zeroDoubt, trace.Resolution, gauge);
        return new RunoutResult
        {
            Status = RunoutStatus.Measured,
            Readings = capture.Seconds.Length,
            Turns = fit.TurnsSeen,
            TurnsPerSecond = Speed(capture, trace, fit),
            Tir = Length.FromMillimetres(extremes.Movement),
            TirU95 = budget.Expanded,
            Eccentricity = Length.FromMillimetres(profile.Harmonics[0].Amplitude),
            EccentricityU95 = eccentricity.SizeU95,
            EccentricityToward = Angle.FromDegrees(Math.Atan2(profile.Harmonics[0].Sine, profile.Harmonics[0].Cosine) * 180 / Math.PI),
            EccentricityTowardU95Degrees = ZeroDoubt.Lasts(capture, reference) ? eccentricity.TowardU95Degrees : null,
            Roundness = Length.FromMillimetres(ProfileExtremes.Of(fit.Series, fit.Harmonics, from: 2).Movement),
            HighSpot = Angle.FromDegrees(360 * (extremes.HighTurns - zero)),
            LowSpot = Angle.FromDegrees(360 * (extremes.LowTurns - zero)),
            HighSpotU95Degrees = reference == AngleReference.FirstReading ? null : 2 * 360 * Math.Sqrt(doubt.HighTurns * doubt.HighTurns + zeroDoubt * zeroDoubt),
            Reference = reference,
            Profile = profile,
            AngleDegrees = Angles(capture, trace, fit, zero),
            DriftMillimetres = Drifts(capture, trace, fit),
            TirByTurnMillimetres = byTurn,
            Faults = faults,
            TirWithFaults = Length.FromMillimetres(WithFaults(profile, extremes, faults, zero)),
            Rejected = trace.LeftOutBy(fit.Weights),
            Warnings = Warnings(settings, trace, fit, reference, extremes.Movement, budget, byTurn, faults),
        };
    }

    private static List<RunoutWarning> Warnings(
        RunoutSettings settings, Trace trace, ProfileFit fit, AngleReference reference, double tir, RunoutBudget budget, double[] byTurn, LocalFault[] faults)
    {
        List<RunoutWarning> warnings = [];
        void Warn(RunoutWarning warning, bool when)
        {
            if (when)
            {
                warnings.Add(warning);
            }
        }

        var knocks = trace.Rejected.Count(left => left.Reason is RejectionReason.Knock or RejectionReason.Stuck) + fit.Weights.Count(weight => weight == 0);
        Warn(RunoutWarning.FewTurns, fit.TurnsSeen < settings.TurnsWanted - 0.05);
        Warn(RunoutWarning.FewReadingsPerTurn, SamplingLoss.Of(fit.Turns.Length / fit.TurnsSeen) > MostLoss);
        Warn(RunoutWarning.NoReference, reference == AngleReference.FirstReading);
        Warn(RunoutWarning.ManyRejected, knocks > ManyRejectedShare * fit.Turns.Length);
        Warn(RunoutWarning.CoarseResolution, tir < 10 * trace.Resolution);
        Warn(RunoutWarning.TurnsDisagree, byTurn.Length > 1 && byTurn.Max() - byTurn.Min() > 0.1 * tir + 3 * budget.Expanded.Millimetres);
        Warn(RunoutWarning.TurnCountAmbiguous, reference == AngleReference.FirstReading && TurnCount.IsAmbiguous(fit));
        Warn(RunoutWarning.IndexDoubtful, fit.IndexRecounted);
        Warn(RunoutWarning.LocalFault, faults.Length > 0);
        Warn(RunoutWarning.BackwardsSuspected, TurnedBack(fit.Turns) > MostTurnedBack);
        return warnings;
    }

    // The farthest way back from the farthest place reached, in turns.
    private static double TurnedBack(double[] turns)
    {
        var (farthest, back) = (double.MinValue, 0.0);
        foreach (var turn in turns)
        {
            farthest = Math.Max(farthest, turn);
            back = Math.Max(back, farthest - turn);
        }

        return back;
    }

    private static double WithFaults(ShaftProfile profile, ProfileExtremes extremes, LocalFault[] faults, double zero)
    {
        var high = profile.At(360 * (extremes.HighTurns - zero));
        var low = high - extremes.Movement;
        foreach (var fault in faults)
        {
            var tip = profile.At(fault.At.Degrees) + fault.Height.Millimetres;
            (high, low) = (Math.Max(high, tip), Math.Min(low, tip));
        }

        return high - low;
    }

    // A shift of zero turns the cosine and sine of each wave by so many of its own angles.
    private static ShaftProfile Profile(ProfileFit fit, double zero)
    {
        var waves = new Harmonic[fit.Harmonics];
        for (var k = 1; k <= waves.Length; k++)
        {
            var (s, c) = Math.SinCos(2 * Math.PI * k * zero);
            var (a, b) = (fit.Series[2 * k - 1], fit.Series[2 * k]);
            waves[k - 1] = new(a * c + b * s, b * c - a * s);
        }

        return new(fit.Series[0], waves);
    }

    private static double[] Angles(RotationCapture capture, Trace trace, ProfileFit fit, double zero)
    {
        var seconds = capture.Seconds.Span;
        var angles = new double[seconds.Length];
        for (var i = 0; i < angles.Length; i++)
        {
            angles[i] = 360 * (fit.TurnsAt(Math.Clamp(seconds[i], trace.Seconds[0], trace.Seconds[^1])) - zero);
        }

        // Times that were spread out belong to the readings of the trace.
        for (var i = 0; i < trace.Places.Length; i++)
        {
            angles[trace.Places[i]] = 360 * (fit.Turns[i] - zero);
        }

        return angles;
    }

    private static double[] Drifts(RotationCapture capture, Trace trace, ProfileFit fit)
    {
        var seconds = capture.Seconds.Span;
        var drifts = new double[seconds.Length];
        for (var i = 0; i < drifts.Length; i++)
        {
            drifts[i] = fit.Drift(trace.CourseAt(seconds[i]));
        }

        return drifts;
    }

    private static bool Stands(RotationCapture capture, Trace trace) => capture.Seconds.Span[^1] - trace.Seconds[^1] > LastSeconds;

    private static double Speed(RotationCapture capture, Trace trace, ProfileFit fit)
    {
        if (Stands(capture, trace))
        {
            return 0;
        }

        var end = trace.Seconds[^1];
        var begin = Math.Max(trace.Seconds[0], end - LastSeconds);
        return Math.Max(0, (fit.TurnsAt(end) - fit.TurnsAt(begin)) / Math.Max(1e-6, end - begin));
    }
}
