using Handspun.Accuracy;
using Handspun.Metrology.Runout;
using Handspun.Metrology.Runout.Faults;
using Handspun.Simulation;

namespace Handspun.Metrology.Tests.Runout.Faults;

public class LocalFaultTests
{
    [Theory]
    [InlineData(0.03, 8, LocalFaultKind.Raised, 140)]
    [InlineData(0.03, 8, LocalFaultKind.Raised, 0)]
    [InlineData(-0.03, 7, LocalFaultKind.Scratch, 200)]
    [InlineData(-0.06, 14, LocalFaultKind.Recess, 310)]
    [InlineData(-0.06, 22, LocalFaultKind.Recess, 60)]
    [InlineData(-0.03, 22, LocalFaultKind.Recess, 160)]
    public void Fault_ThatComesBackEveryTurn_IsFoundNamedAndKeptApart(double height, double width, LocalFaultKind kind, double at)
    {
        var named = 0;
        for (var seed = 1; seed <= 8; seed++)
        {
            var (clean, spoilt) = Pair(seed, new ShaftFault(at, width, height));

            Assert.Equal(clean.Tir!.Value.Millimetres, spoilt.Tir!.Value.Millimetres, 0.0015);
            Assert.Equal(spoilt.Faults.Count > 0, spoilt.Warnings.Contains(RunoutWarning.LocalFault));
            if (spoilt.Faults is [var fault] && fault.Kind == kind && Math.Abs(fault.Height.Millimetres - height) < 0.15 * Math.Abs(height))
            {
                named++;
                Assert.InRange(Off(fault.At.Degrees, at), 0, 20);   // a pulse a turn leaves the hand between the pulses to guess
                Assert.InRange(fault.Turns, 3, fault.TurnsLooked);
                Assert.Contains(spoilt.Rejected, left => left.Reason == RejectionReason.LocalFault);
                Assert.InRange(spoilt.TirWithFaults!.Value.Millimetres, spoilt.Tir.Value.Millimetres - 1e-9, spoilt.Tir.Value.Millimetres + Math.Abs(height));
            }
        }

        Assert.InRange(named, 6, 8);
    }

    [Fact]
    public void Fault_OnTheHighSpot_AddsItsHeightToTheMovement()
    {
        var shape = Shape(3);
        var (clean, spoilt) = Pair(3, new ShaftFault(shape.HighSpotDegrees, 8, 0.03));

        Assert.Equal(clean.Tir!.Value.Millimetres + 0.03, spoilt.TirWithFaults!.Value.Millimetres, 0.004);
        Assert.Equal(clean.TirWithFaults, clean.Tir);
    }

    [Fact]
    public void CleanShafts_WithKnocksToo_HaveNoFault()
    {
        for (var seed = 1; seed <= 40; seed++)
        {
            var result = Captures.Measure(Captures.Usual(seed, AngleAid.IndexEachTurn, new Indicator { Knocks = seed % 5 }, turns: 4.5).ToCapture());

            Assert.Empty(result.Faults);
            Assert.DoesNotContain(RunoutWarning.LocalFault, result.Warnings);
        }
    }

    [Fact]
    public void CleanShafts_UnderAHandThatShoves_HaveNoFault()
    {
        var shoves = CaptureKinds.All.Single(kind => kind.Name == "no index, shoves");
        for (var seed = 1; seed <= 30; seed++)
        {
            Assert.Empty(Captures.Measure(shoves.Draw(seed).Capture.ToCapture()).Faults);
        }
    }

    [Fact]
    public void Sentences_OfEveryKind_TellTheNextStep() => Assert.All(
        Enum.GetValues<LocalFaultKind>(),
        kind => Assert.EndsWith("measure again.", new LocalFault(kind, default, 5, default, default, 3, 3).Sentence, StringComparison.Ordinal));

    private static ShaftShape Shape(int seed) => ShaftShape.WithTir(0.08, seed, harmonics: 2);

    private static (RunoutResult Clean, RunoutResult Spoilt) Pair(int seed, ShaftFault fault) =>
        (Measured(Shape(seed), seed), Measured(Shape(seed).With(fault), seed));

    // A once-a-turn index has its zero where the shape has it, so that angles can be compared.
    private static RunoutResult Measured(ShaftShape shape, int seed) => Captures.Measure(CaptureSimulation.Run(
        shape,
        HandTurn.Create(seed, turns: 5.5, turnsPerSecond: 0.4),
        new Indicator { RateHz = 80 },
        seed,
        leadInSeconds: 0.5,
        leadOutSeconds: 0.5,
        AngleAid.IndexEachTurn).ToCapture());

    private static double Off(double degrees, double from) => Math.Abs(degrees - from - 360 * Math.Round((degrees - from) / 360));
}
