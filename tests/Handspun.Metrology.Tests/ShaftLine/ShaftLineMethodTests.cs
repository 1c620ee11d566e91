using CsCheck;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.ShaftLine;

namespace Handspun.Metrology.Tests.ShaftLine;

/// <summary>Cranks made wrong in known ways, in space, without the small-angle formulas.</summary>
public class ShaftLineMethodTests
{
    [Theory]
    [InlineData(0.001, CrankpinSide.AtCrankpin, "open", 0)]
    [InlineData(-0.001, CrankpinSide.OppositeCrankpin, "pinched", 180)]
    public void Lines_OfFlywheelsTiltedAtTheCrankpin_StandAtThatAngleInItsPlane(double open, CrankpinSide against, string word, double toward)
    {
        var result = ShaftLineMethod.Of(new MadeCrank { Open = open, Crankpin = 75 }.Measure());

        Assert.Equal(0.001, result.Apart!.Kink.Ratio, 2e-8);
        Assert.Equal(0, result.Apart.Offset.Millimetres, 1e-4);
        Assert.Equal(75 + toward, result.Apart.KinkToward!.Value.Degrees, 1e-3);
        Assert.Equal(HighSpots.SameSide, result.HighSpots);
        Assert.Equal((against, against, against), (result.Against, result.DriveSide!.Against, result.PinionSide!.Against));
        Assert.Contains(word, result.Sentence, StringComparison.Ordinal);
    }

    // A wheel turned by φ about the pin moves its shaft by 2·throw·sin(φ/2), square to the throw.
    [Fact]
    public void Lines_OfAFlywheelTurnedOnTheCrankpin_AreOffsetSquareToIt()
    {
        var result = ShaftLineMethod.Of(new MadeCrank { Turned = 0.0005, Crankpin = 200 }.Measure());

        Assert.Equal(2 * 50 * Math.Sin(0.00025), result.Apart!.Offset.Millimetres, 1e-6);
        Assert.Equal(90, (result.Apart.OffsetToward!.Value.Degrees - 200 + 360) % 180, 0.1);
        Assert.Equal(0, result.Apart.Kink.Ratio, 1e-8);
        Assert.Null(result.Apart.KinkToward);
        Assert.Equal((HighSpots.Opposite, CrankpinSide.SquareToCrankpin), (result.HighSpots, result.Against));
        Assert.Contains("turned on the crankpin", result.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Lines_OfUnequalThrows_AreOffsetInLineWithTheCrankpin()
    {
        var result = ShaftLineMethod.Of(new MadeCrank { Longer = 0.03, Crankpin = 10 }.Measure());

        Assert.Equal(0.03, result.Apart!.Offset.Millimetres, 1e-6);
        Assert.Equal(190, result.Apart.OffsetToward!.Value.Degrees, 0.01);
        Assert.Equal((HighSpots.Opposite, CrankpinSide.AtCrankpin), (result.HighSpots, result.Against));
        Assert.Contains("along the crank throw", result.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Lines_OfFlywheelsLeaningAboutTheThrow_StandAtThatAngleSquareToIt()
    {
        var result = ShaftLineMethod.Of(new MadeCrank { Lean = 0.0008, Crankpin = 300 }.Measure());

        Assert.Equal(0.0008, result.Apart!.Kink.Ratio, 2e-8);
        Assert.Equal(30, result.Apart.KinkToward!.Value.Degrees, 1e-3);
        Assert.Equal((HighSpots.SameSide, CrankpinSide.SquareToCrankpin), (result.HighSpots, result.Against));
    }

    [Fact]
    public void Lines_OfAnOffsetAndATiltOfOneSize_AreCrosswise()
    {
        var result = ShaftLineMethod.Of(new MadeCrank { Open = 0.0008, Turned = 0.001 }.Measure());

        Assert.Equal((HighSpots.Crosswise, null), (result.HighSpots, result.Against));
        Assert.Contains("crosswise", result.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void End_OfAnyCrank_LeansByItsRunoutOverItsDistance()
    {
        var crank = new MadeCrank { Open = 0.001, Turned = 0.0004 }.Measure();
        var end = ShaftLineMethod.Of(crank).PinionSide!;

        Assert.Equal(crank.PinionSide.Eccentricity.Millimetres / 40, end.Tilt.Ratio, 1e-12);
        Assert.Equal(crank.PinionSide.Eccentricity.Millimetres / 40 * 60, end.Offset.Millimetres, 1e-12);
        Assert.Equal(crank.PinionSide.Toward, end.Toward);
    }

    [Fact]
    public void Lines_WithTheMarkElsewhere_AreTheSameAndGoRoundWithIt() =>
        Gen.Select(Gen.Double[-0.002, 0.002], Gen.Double[-0.002, 0.002], Gen.Double[-0.05, 0.05], Gen.Double[0, 360]).Sample(
            (open, turned, longer, shift) =>
            {
                var crank = new MadeCrank { Open = open, Turned = turned, Longer = longer };
                var (plain, moved) = (ShaftLineMethod.Of(crank.Measure()), ShaftLineMethod.Of((crank with { Crankpin = shift }).Measure()));
                Assert.Equal(plain.Sentence, moved.Sentence);
                Assert.Equal(plain.Against, moved.Against);
                Assert.Equal(plain.DriveSide!.TiltU95.Ratio, moved.DriveSide!.TiltU95.Ratio, 1e-12);
                Assert.Equal(plain.Apart is null, moved.Apart is null);
                if (plain.Apart is { } apart)
                {
                    Assert.Equal(apart.Kink.Ratio, moved.Apart!.Kink.Ratio, 1e-12);
                    Assert.Equal(apart.OffsetU95.Millimetres, moved.Apart.OffsetU95.Millimetres, 1e-9);
                }
            },
            iter: 200);

    [Theory]
    [InlineData(10.0, true)]
    [InlineData(31.0, false)]
    [InlineData(null, false)]
    public void Directions_WithAnglesOfAnUncertainty_AreNamedOnlyWhenKnownWellEnough(double? angleU95, bool named)
    {
        var crank = new MadeCrank { Open = 0.001 }.Measure();
        var result = ShaftLineMethod.Of(crank with { DriveSide = crank.DriveSide with { TowardU95Degrees = angleU95 } });

        Assert.Equal(named, result.HighSpots is not null);
        Assert.Equal(named, result.Against is not null);
        Assert.Equal(named, result.Apart is not null);
        Assert.Equal(named, result.DriveSide!.Toward is not null);
        Assert.NotNull(result.PinionSide!.Toward);
        Assert.Equal(0.0005, result.DriveSide.Tilt.Ratio, 1e-8);
    }

    [Theory]
    [InlineData(1.0, 1.0, "Neither")]
    [InlineData(1e-6, 1.0, "Only the drive")]
    [InlineData(1.0, 1e-6, "Only the pinion")]
    public void Runout_WithinItsUncertainty_HasNoDirection(double driveU95, double pinionU95, string words)
    {
        var crank = new MadeCrank { Open = 0.001 }.Measure();
        var result = ShaftLineMethod.Of(crank with
        {
            DriveSide = crank.DriveSide with { EccentricityU95 = Length.FromMillimetres(driveU95) },
            PinionSide = crank.PinionSide with { EccentricityU95 = Length.FromMillimetres(pinionU95) },
        });

        Assert.Null(result.HighSpots);
        Assert.Null(result.Against);
        Assert.StartsWith(words, result.Sentence, StringComparison.Ordinal);
        Assert.Equal(driveU95 < 0.01, result.DriveSide!.Against is not null);
    }

    [Fact]
    public void Crankpin_NotNoted_IsNotSpokenOf()
    {
        var result = ShaftLineMethod.Of(new MadeCrank { Open = 0.001 }.Measure() with { Crankpin = null });

        Assert.Equal((HighSpots.SameSide, null), (result.HighSpots, result.Against));
        Assert.Contains("not known well enough", result.Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, 120, 0.01, "outside its bearing")]
    [InlineData(-5, 120, 0.01, "outside its bearing")]
    [InlineData(40, 0, 0.01, "apart")]
    [InlineData(40, 120, -0.01, "less than nothing")]
    [InlineData(40, 1e300, 0.01, "ten metres")]
    [InlineData(0.001, 120, 0.01, "farther from its bearing")]
    public void Lengths_ThatCannotBe_AreRejectedWithASentence(double outward, double between, double eccentricity, string because)
    {
        var crank = new MadeCrank().Measure();
        var end = crank.DriveSide with { FromBearing = Length.FromMillimetres(outward), Eccentricity = Length.FromMillimetres(eccentricity) };
        var result = ShaftLineMethod.Of(crank with { DriveSide = end, BetweenBearings = Length.FromMillimetres(between) });

        Assert.Equal(ShaftLineStatus.Rejected, result.Status);
        Assert.Contains(because, result.Missing, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(-1)]
    public void Uncertainty_ThatCannotBe_IsRejected(double angleU95) =>
        Assert.Equal(ShaftLineStatus.Rejected, ShaftLineMethod.Of(new MadeCrank { Open = 0.001 }.Measure(angleU95)).Status);

    [Fact]
    public void Sentence_OfAnyCrank_EndsWithTheCaution() =>
        Gen.Select(Gen.Double[-0.002, 0.002], Gen.Double[-0.002, 0.002], Gen.Double[-1, 90]).Sample(
            (open, turned, u) => Assert.EndsWith(
                ShaftLineMethod.Caution, ShaftLineMethod.Of(new MadeCrank { Open = open, Turned = turned }.Measure(u)).Sentence, StringComparison.Ordinal),
            iter: 200);
}
