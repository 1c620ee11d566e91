using Handspun.Accuracy;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;
using Handspun.Simulation;

namespace Handspun.Metrology.Tests.Runout;

public class RunoutMethodTests
{
    [Fact]
    public void Runout_OfASteadyPureSine_IsTwiceTheAmplitude()
    {
        var result = Captures.Measure(Captures.Of(400, 8, t => 0.3 + 0.05 * Math.Sin(2 * Math.PI * 0.5 * t + 0.3)));

        Assert.Equal(RunoutStatus.Measured, result.Status);
        Assert.Equal(0.1, result.Tir!.Value.Millimetres, 2e-5);
        Assert.Equal(0.05, result.Eccentricity!.Value.Millimetres, 2e-5);
        Assert.Equal(4, result.Turns, 0.05);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Runout_OfHandTurnedShafts_LiesWithinItsUncertainty(bool index)
    {
        var inside = 0;
        for (var seed = 0; seed < 40; seed++)
        {
            var simulated = Captures.Usual(seed, index ? AngleAid.IndexEachTurn : null);
            var result = Captures.Measure(simulated.ToCapture());
            Assert.Equal(RunoutStatus.Measured, result.Status);
            var error = Math.Abs(result.Tir!.Value.Millimetres - simulated.TrueTirMillimetres);
            Assert.True(error < 0.004, $"seed {seed}: {error}");
            inside += error <= result.TirU95!.Value.Millimetres ? 1 : 0;
        }

        Assert.InRange(inside, 36, 40);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.001)]
    public void Runout_OfReadingsThatNeverChange_SaysThatNothingMoves(double resolution)
    {
        var result = Captures.Measure(Captures.Of(300, 3, _ => 0.01), new GaugeTraits { Resolution = Length.FromMillimetres(resolution) });

        Assert.Equal((RunoutStatus.TooShort, 0.0), (result.Status, result.Turns));
        Assert.StartsWith("The readings do not move", result.Missing, StringComparison.Ordinal);
    }

    [Fact]
    public void Turns_WithAPauseBeforeAndAfter_AreThoseOfTheHand()
    {
        var simulated = Captures.Usual(3, AngleAid.IndexEachTurn);
        var result = Captures.Measure(simulated.ToCapture());

        Assert.Equal(3.5, result.Turns, 0.2);
        Assert.Equal(0, result.TurnsPerSecond);
        Assert.Contains(result.Rejected, left => left is { Reading: 0, Reason: RejectionReason.Standing });
        Assert.Equal(simulated.Seconds.Length, result.AngleDegrees.Count);
        Assert.Equal(AngleReference.Index, result.Reference);
    }

    [Fact]
    public void Runout_WithOneWildReading_IsNotFooled()
    {
        var simulated = Captures.Usual(5);
        var clean = Captures.Measure(simulated.ToCapture());
        simulated.Millimetres[170] += 0.3;
        var knocked = Captures.Measure(simulated.ToCapture());

        Assert.Equal(clean.Tir!.Value.Millimetres, knocked.Tir!.Value.Millimetres, 0.0005);
        Assert.Contains(new RejectedReading(170, RejectionReason.Knock), knocked.Rejected);
    }

    [Fact]
    public void Readings_ThatTheGaugeRepeated_AreLeftOut()
    {
        var simulated = Captures.Usual(7, AngleAid.IndexEachTurn);
        var first = Enumerable.Range(100, 150).MaxBy(i => Math.Abs(simulated.Millimetres[i + 10] - simulated.Millimetres[i]));
        Array.Fill(simulated.Millimetres, simulated.Millimetres[first], first, 10);
        var result = Captures.Measure(simulated.ToCapture());

        Assert.Contains(new RejectedReading(first + 5, RejectionReason.Stuck), result.Rejected);
        Assert.Equal(simulated.TrueTirMillimetres, result.Tir!.Value.Millimetres, 0.001);
    }

    [Fact]
    public void HighSpot_WithAnEncoder_IsWhereTheShaftIsHighest()
    {
        var simulated = Captures.Usual(6, new AngleAid { EncoderSteps = 1000 });
        var result = Captures.Measure(simulated.ToCapture());

        Assert.Equal(AngleReference.Encoder, result.Reference);
        Assert.Equal(simulated.TrueHighSpotDegrees, result.HighSpot!.Value.Degrees, 2.0);
        Assert.NotNull(result.HighSpotU95Degrees);
    }

    [Theory]
    [InlineData(0.3)]
    [InlineData(0.6)]
    [InlineData(0.85)]
    public void Capture_OfLessThanAWholeTurn_HasNoRunoutAndSaysWhatToDo(double turns)
    {
        for (var seed = 0; seed < 12; seed++)
        {
            foreach (var aid in new[] { AngleAid.None, AngleAid.IndexEachTurn, new AngleAid { EncoderSteps = 360 } })
            {
                var result = Captures.Measure(Captures.Usual(seed, aid, turns: turns).ToCapture());

                Assert.Equal(RunoutStatus.TooShort, result.Status);
                Assert.Null(result.Tir);
                Assert.Contains("turn", result.Missing);
                Assert.InRange(result.Turns, 0, 1);
            }
        }
    }

    [Fact]
    public void Capture_OfAShaftThatStands_IsTooShort()
    {
        var result = Captures.Measure(Captures.Of(200, 4, _ => 0.123));

        Assert.Equal(RunoutStatus.TooShort, result.Status);
        Assert.Equal(0, result.Turns);
        Assert.Contains("turn it", result.Missing);
    }

    [Fact]
    public void Shaft_ThatRunsTrueToADigit_IsMeasuredWhereAnIndexShowsItTurned()
    {
        var capture = Captures.Of(300, 6, _ => 0.12) with { IndexSeconds = new[] { 1.0, 2.4, 3.6, 5.1 } };
        var result = Captures.Measure(capture);

        Assert.Equal(RunoutStatus.Measured, result.Status);
        Assert.InRange(result.Tir!.Value.Millimetres, 0, 0.0003);
        Assert.InRange(result.TirU95!.Value.Millimetres, 0.0005, 0.002);
        Assert.Contains(RunoutWarning.CoarseResolution, result.Warnings);
    }

    [Fact]
    public void Capture_WithBadContents_IsRejectedWithASentence()
    {
        var good = Captures.Usual(1).ToCapture();
        RotationCapture[] bad =
        [
            new() { Seconds = ReadOnlyMemory<double>.Empty, Millimetres = ReadOnlyMemory<double>.Empty },
            good with { Millimetres = good.Millimetres[1..] },
            good with { Millimetres = Changed(good.Millimetres, 20, double.NaN) },
            good with { Seconds = Changed(good.Seconds, 20, double.PositiveInfinity) },
            good with { Seconds = Changed(good.Seconds, 20, 0) },
            good with { IndexSeconds = new[] { 2.0, 1.0 } },
            good with { TurnsPerIndex = 0 },
            good with { EncoderSeconds = new[] { 1.0 } },
            good with { Seconds = good.Seconds[..3], Millimetres = good.Millimetres[..3] },
        ];

        Assert.All(bad, capture =>
        {
            var result = Captures.Measure(capture);
            Assert.Equal(RunoutStatus.Rejected, result.Status);
            Assert.Null(result.Tir);
            Assert.EndsWith(".", result.Missing);
        });
    }

    // Readings come in while the hand turns; every prefix must get some answer, and turns must grow.
    [Fact]
    public void Capture_StillGoingOn_IsAnsweredAtEveryLength()
    {
        var whole = Captures.Usual(8).ToCapture();
        var turnsAtEnd = 0.0;
        for (var readings = 1; readings < whole.Seconds.Length; readings += 7)
        {
            var result = Captures.Measure(whole with { Seconds = whole.Seconds[..readings], Millimetres = whole.Millimetres[..readings] });
            Assert.Equal(result.Status == RunoutStatus.Measured, result.Tir is not null);
            Assert.Equal(result.Status == RunoutStatus.Measured, result.Missing is null);
            turnsAtEnd = result.Turns;
        }

        Assert.Equal(3.5, turnsAtEnd, 0.2);
    }

    // Common practice, no source: a shaft with 0.003 in of runout is in good shape, one with 0.013 in is not.
    [Theory]
    [InlineData(0.003, Handspun.Metrology.Decision.Verdict.Within)]
    [InlineData(0.013, Handspun.Metrology.Decision.Verdict.Over)]
    public void Shaft_AgainstFiveThousandths_GetsTheVerdictOfTheTrade(double inches, Handspun.Metrology.Decision.Verdict verdict)
    {
        var gauge = new Indicator { ResolutionMillimetres = 0.0127, NoiseMicrometres = 1 };
        var traits = new GaugeTraits { Resolution = Length.FromInches(0.0005), ErrorLimit = Length.FromInches(0.0005) };
        for (var seed = 0; seed < 20; seed++)
        {
            var simulated = Captures.Usual(seed, AngleAid.IndexEachTurn, gauge, tir: 25.4 * inches);
            var result = Captures.Measure(simulated.ToCapture(), traits);
            var decision = Handspun.Metrology.Decision.ConformityRule.Decide(
                result.Tir!.Value, result.TirU95!.Value, Handspun.Metrology.Decision.Tolerance.AtMost(Length.FromInches(0.005)));
            Assert.Equal(verdict, decision.Verdict);
        }
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Index_WithAPulseMissedOrDoubled_IsCountedAnewAndSaidSo(bool missed)
    {
        for (var seed = 0; seed < 12; seed++)
        {
            var simulated = Captures.Usual(seed, AngleAid.IndexEachTurn, turns: 6.4);
            var pulses = simulated.IndexSeconds.ToList();
            if (missed)
            {
                pulses.RemoveAt(2);
            }
            else
            {
                pulses.Insert(3, pulses[2] + 0.1);
            }

            var result = Captures.Measure(simulated.ToCapture() with { IndexSeconds = pulses.ToArray() });

            Assert.Contains(RunoutWarning.IndexDoubtful, result.Warnings);
            Assert.Equal(6.4, result.Turns, 0.4);
            Assert.Equal(simulated.TrueTirMillimetres, result.Tir!.Value.Millimetres, 0.002);
        }
    }

    [Fact]
    public void Index_ThatIsSound_RaisesNoDoubt() => Assert.All(
        Enumerable.Range(0, 20),
        seed => Assert.DoesNotContain(
            RunoutWarning.IndexDoubtful, Captures.Measure(Captures.Usual(seed, AngleAid.IndexEachTurn, turns: 6.4).ToCapture()).Warnings));

    // Two equal lobes and nothing else look just like one lobe at twice the speed.
    [Fact]
    public void Shaft_WithTwoEqualLobesAndNoIndex_IsReportedAsAmbiguous()
    {
        var simulated = CaptureSimulation.Run(new ShaftShape([new(2, 0.04, 30)]), HandTurn.Create(5, 3.5, 0.5), new Indicator(), 5, 1, 1);
        var result = Captures.Measure(simulated.ToCapture());

        Assert.Contains(RunoutWarning.TurnCountAmbiguous, result.Warnings);
        Assert.Equal(0.08, result.Tir!.Value.Millimetres, 0.001);
    }

    [Fact]
    public void Shaft_WithTwoEqualLobesAndAnIndex_IsCountedByTheIndex()
    {
        var simulated = CaptureSimulation.Run(
            new ShaftShape([new(2, 0.04, 30)]), HandTurn.Create(5, 3.5, 0.5), new Indicator(), 5, 1, 1, AngleAid.IndexEachTurn);
        var result = Captures.Measure(simulated.ToCapture());

        Assert.DoesNotContain(RunoutWarning.TurnCountAmbiguous, result.Warnings);
        Assert.Equal(3.5, result.Turns, 0.2);
        Assert.True(result.Eccentricity!.Value.Millimetres < 0.003);
    }

    [Fact]
    public void Shaft_WithTwoLobesAndMarks_IsCountedByTheMarks()
    {
        for (var seed = 1; seed < 8; seed++)
        {
            var simulated = CaptureSimulation.Run(
                new ShaftShape([new(2, 0.04, 30), new(1, 0.0005, 0)]),
                HandTurn.Create(seed, 4.2, 0.5), new Indicator(), seed, 1, 1, new AngleAid { Marks = true });
            var result = Captures.Measure(simulated.ToCapture());

            Assert.Equal(4.2, result.Turns, 0.6);
            Assert.Equal(AngleReference.Mark, result.Reference);
            Assert.DoesNotContain(RunoutWarning.TurnCountAmbiguous, result.Warnings);
        }
    }

    [Fact]
    public void HighSpot_WithAnIndex_IsMostlyWithinFifteenDegrees()
    {
        var near = Enumerable.Range(0, 40).Count(seed =>
        {
            var simulated = Captures.Usual(seed, AngleAid.IndexEachTurn);
            var off = Captures.Measure(simulated.ToCapture()).HighSpot!.Value.Degrees - simulated.TrueHighSpotDegrees;
            return Math.Abs(off - 360 * Math.Round(off / 360)) < 15;
        });

        Assert.InRange(near, 36, 40);
    }

    // The pulse comes from the rear wheel, the shaft turns 2.81 times as often.
    [Fact]
    public void HighSpot_WithAnIndexAtAnotherWheel_CountsFromTheFirstPulse()
    {
        var simulated = Captures.Usual(4, new AngleAid { TurnsPerIndex = 2.81 }, turns: 7);
        var result = Captures.Measure(simulated.ToCapture(turnsPerIndex: 2.81));
        var off = result.HighSpot!.Value.Degrees - simulated.TrueHighSpotDegrees;

        Assert.Equal(AngleReference.Index, result.Reference);
        Assert.Equal(0, off - 360 * Math.Round(off / 360), 15.0);
        Assert.Equal(7, result.Turns, 0.25);
    }

    // Pressed for an answer before the hand is done: turns and speed are those of the part that is there.
    [Fact]
    public void Speed_WhileTheHandStillTurns_IsThatOfTheLastMoments()
    {
        var simulated = Captures.Usual(8, AngleAid.IndexEachTurn, turns: 5);
        var part = Array.FindIndex(simulated.Seconds, at => at > 6);
        var result = Captures.Measure(simulated.ToCapture() with
        {
            Seconds = simulated.Seconds.AsMemory(0, part),
            Millimetres = simulated.Millimetres.AsMemory(0, part),
            IndexSeconds = simulated.IndexSeconds.Where(at => at < simulated.Seconds[part]).ToArray(),
        });
        var back = part - 20;   // 0.4 s at 50 Hz
        var speed = (simulated.TrueDegrees[part - 1] - simulated.TrueDegrees[back]) / 360 / (simulated.Seconds[part - 1] - simulated.Seconds[back]);

        Assert.Equal(speed, result.TurnsPerSecond, 0.15);
        Assert.Equal((simulated.TrueDegrees[part - 1] - simulated.TrueDegrees[0]) / 360, result.Turns, 0.3);
    }

    [Fact]
    public void RunoutByTurn_OfAWholeCapture_IsOneForEachTurnAndAlike()
    {
        var simulated = Captures.Usual(9, AngleAid.IndexEachTurn, turns: 4.5);
        var result = Captures.Measure(simulated.ToCapture());

        Assert.Equal(4, result.TirByTurnMillimetres.Count);
        Assert.All(result.TirByTurnMillimetres, runout => Assert.Equal(simulated.TrueTirMillimetres, runout, 0.003));
        Assert.DoesNotContain(RunoutWarning.TurnsDisagree, result.Warnings);
    }

    [Fact]
    public void Drift_OfTheStand_IsTakenOutAndShown()
    {
        var simulated = Captures.Usual(10, AngleAid.IndexEachTurn, new Indicator { DriftMicrometres = 12 }, turns: 5);
        var result = Captures.Measure(simulated.ToCapture());

        Assert.Equal(simulated.TrueTirMillimetres, result.Tir!.Value.Millimetres, 0.002);
        Assert.Equal(0.012 * 0.8, result.DriftMillimetres[^1] - result.DriftMillimetres[0], 0.003);
    }

    private static double[] Changed(ReadOnlyMemory<double> values, int at, double value)
    {
        var changed = values.ToArray();
        changed[at] = value;
        return changed;
    }

    [Theory]
    [InlineData(0, 0, 1)]
    [InlineData(40, 15, 20)]
    public void Warnings_OfAShaftThatWasTurnedBack_SaySoAndTheRunoutHolds(double degreesBack, int fewest, int most)
    {
        var warned = 0;
        for (var seed = 1; seed <= 20; seed++)
        {
            var simulated = CaptureSimulation.Run(
                ShaftShape.WithTir(0.08, seed, harmonics: 3),
                HandTurn.Create(seed, turns: 5, turnsPerSecond: 0.5, new HandHabits { Unevenness = 0.4, Stops = 1, SlipBackDegrees = degreesBack }),
                new Indicator { RateHz = 90 },
                seed,
                leadInSeconds: 0.5,
                leadOutSeconds: 0.5,
                AngleAid.IndexEachTurn);
            var result = Captures.Measure(simulated.ToCapture());
            warned += result.Warnings.Contains(RunoutWarning.BackwardsSuspected) ? 1 : 0;
            Assert.Equal(simulated.TrueTirMillimetres, result.Tir!.Value.Millimetres, 0.002);
        }

        Assert.InRange(warned, fewest, most);
    }
}
