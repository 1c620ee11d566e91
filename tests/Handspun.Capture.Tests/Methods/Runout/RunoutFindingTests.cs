using Handspun.Capture.Methods;
using Handspun.Capture.Methods.Runout;
using Handspun.Jobs.Records;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;
using Handspun.Metrology.Runout.Faults;

namespace Handspun.Capture.Tests.Methods.Runout;

public sealed class RunoutFindingTests
{
    // Three lobes of 4 µm: peak to valley is twice the amplitude about each of the four circles, whatever the eccentricity (closed form).
    [Fact]
    public void Figures_OfThreeLobes_HaveTwiceTheAmplitudeAboutEveryCircle()
    {
        var figures = Figures(Measured with { Profile = new ShaftProfile(0, [new(0.02, 0.01), default, new(0.004, 0)]) });

        Assert.Equal(0.008, figures.ZoneRoundnessMillimetres!.Value, 1e-9);
        Assert.Equal(0.008, figures.CircumscribedRoundnessMillimetres!.Value, 1e-9);
        Assert.Equal(0.008, figures.InscribedRoundnessMillimetres!.Value, 1e-9);
    }

    [Fact]
    public void Figures_OfAShaftWithABurr_KeepItApartFromTheRunout()
    {
        var burr = new LocalFault(LocalFaultKind.Raised, Angle.FromDegrees(202), 7, Length.FromMillimetres(0.02), Length.FromMillimetres(0.001), 3, 4);

        var figures = Figures(Measured with { Faults = [burr], TirWithFaults = Length.FromMillimetres(0.07), TirByTurnMillimetres = [0.049, 0.051] });

        Assert.Equal((0.05, 0.07), (figures.TirMillimetres, figures.TirWithFaultsMillimetres));
        Assert.Equal([0.049, 0.051], figures.TirByTurnMillimetres!);
        var kept = Assert.Single(figures.Faults!);
        Assert.Equal(("raised", 202.0, 7.0, 0.02, 3, 4), (kept.Kind, kept.AtDegrees, kept.WidthDegrees, kept.HeightMillimetres, kept.SeenOnTurns, kept.OfTurns));
    }

    [Fact]
    public void Headline_OfAFinding_IsWhatItsFiguresHoldAgainstTheLimit()
    {
        CaptureFinding finding = new RunoutFinding(Measured);

        Assert.Equal((finding.Figures.Value, finding.Figures.ValueU95), finding.Headline);
        Assert.Equal(0.05, finding.Headline.Value!.Value.Millimetres);
    }

    [Fact]
    public void Advice_ToAHandThatTurnsTooFast_IsHowLongATurnMustTake()
    {
        var finding = new RunoutFinding(Measured with { TurnsPerSecond = 1 });
        var soFar = new CaptureSoFar(Wanted: 3, ReadingsPerSecond: 8);

        Assert.Equal("Turn slower: this gauge needs at least 1.5 seconds a turn.", finding.Advice(soFar));
        Assert.Equal("turning-too-fast", Assert.Single(finding.LiveWarnings(soFar)).Code);
        Assert.Equal(1.5, ((RunoutLive)finding.Live(soFar)).LeastSecondsPerTurn);
    }

    private static RunoutResult Measured { get; } = new()
    {
        Status = RunoutStatus.Measured,
        Readings = 380,
        Turns = 2.1,
        Tir = Length.FromMillimetres(0.05),
        TirU95 = Length.FromMillimetres(0.004),
    };

    private static RunoutFigures Figures(RunoutResult result) => (RunoutFigures)new RunoutFinding(result).Figures;
}
