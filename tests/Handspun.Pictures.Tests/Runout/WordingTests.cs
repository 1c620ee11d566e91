using Handspun.Jobs.Lengths;
using Handspun.Metrology.Decision;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;
using Handspun.Pictures.Runout;

namespace Handspun.Pictures.Tests.Runout;

public sealed class WordingTests
{
    private static readonly Tolerance AtMost = Tolerance.AtMost(Length.FromInches(0.003));

    [Theory]
    [InlineData(Verdict.Within, "Within the limit of 0.0030 in")]
    [InlineData(Verdict.Over, "Over the limit of 0.0030 in")]
    [InlineData(Verdict.Undecided, "Too close to call: the limit is 0.0030 in")]
    [InlineData(null, "Limit 0.0030 in")]
    public void Decision_AgainstALimit_NamesTheLimit(Verdict? verdict, string text) =>
        Assert.Equal(text, Wording.Decision(verdict, AtMost, LengthUnit.Inch));

    [Fact]
    public void Decision_AgainstALimitWithTwoSides_SaysOutside() => Assert.Equal(
        "Outside the limit of 0.010 mm to 0.020 mm",
        Wording.Decision(Verdict.Over, Tolerance.Between(Length.FromMillimetres(0.01), Length.FromMillimetres(0.02)), LengthUnit.Millimetre));

    [Theory]
    [InlineData(359.4, "359°")]
    [InlineData(359.6, "0°")]
    [InlineData(0, "0°")]
    public void Direction_InWholeDegrees_IsNeverAFullTurn(double degrees, string text) => Assert.Equal(text, Wording.Degrees(degrees));

    [Fact]
    public void Notes_OfARecord_SayWhatItRestsOnAndEveryWarning()
    {
        var notes = Wording.Notes(new InventedRecord { Knocks = [(0.5, 0.4)], StandingPart = 0, Warnings = [RunoutWarning.FewTurns, RunoutWarning.NoReference] }.Content()).ToArray();
        Assert.Equal("3.3 turns · 420 readings · left out: 1 knock · ± is the expanded uncertainty, k = 2.", notes[0]);
        Assert.Contains(RunoutWarningText.Sentence(RunoutWarning.FewTurns), notes);
        Assert.Contains(RunoutWarningText.Sentence(RunoutWarning.NoReference), notes);
    }

    [Fact]
    public void Notes_OfReadingsThatWereLeftOut_SayWhyEachWas()
    {
        var content = new InventedRecord { StandingPart = 0 }.Content();
        RejectedReading[] left = [new(0, RejectionReason.Knock), new(1, RejectionReason.Knock), new(2, RejectionReason.Standing), new(3, RejectionReason.Stuck), new(4, RejectionReason.LocalFault)];

        Assert.Contains("left out: 2 knocks, 1 because the shaft stood still, 1 because the gauge stuck, 1 on a narrow place", Wording.Notes(content with { Result = content.Result with { Rejected = left } }).First(), StringComparison.Ordinal);
        Assert.Contains("none left out", Wording.Notes(content with { Result = content.Result with { Rejected = [] } }).First(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.0005, false)]
    [InlineData(0.03, true)]
    public void Limit_FarAboveTheMovement_IsLeftOffTheScale(double inches, bool offScale) => Assert.Equal(
        offScale, LimitBand.Of(Tolerance.AtMost(Length.FromInches(inches)), movement: 0.002, LengthUnit.Inch)!.OffScale);
}
