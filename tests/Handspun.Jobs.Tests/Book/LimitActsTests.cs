using Handspun.Jobs.Book;
using Handspun.Jobs.Book.Acts;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Store;
using Handspun.Jobs.Tests.Records;

namespace Handspun.Jobs.Tests.Book;

public sealed class LimitActsTests
{
    private readonly Job _job = PlannedJob.New();

    [Fact]
    public void Confirming_KeepsWhoWhenAndWhere()
    {
        var set = Confirm(new("", "0.004 in", "invented manual, page 7", "gear", "service"));

        Assert.Equal(0.1016, set.Limit.UpperMillimetres!.Value, 1e-12);   // 1 in = 25.4 mm exactly
        Assert.Equal(("A. Nobody", SampleRecords.Start, CamDrive.Gear, LimitAge.Service), (set.Limit.ConfirmedBy, set.Limit.ConfirmedAt, set.Limit.Drive, set.Limit.Age));
        Assert.Equal("A. Nobody confirmed the limit at most 0.004 in: invented manual, page 7", $"A. Nobody {BookSentence.Of(set)}");
        Assert.Equal("service limit, gear drive; invented manual, page 7; confirmed by A. Nobody", LimitSentence.All(set.Limit));
    }

    // The page's number in the digits of the script it is written in (Unicode, general category Nd).
    [Theory]
    [InlineData("\u05de\u05d3\u05e8\u05d9\u05da \u05d1\u05d3\u05d5\u05d9, 7", "\u05d0. \u05d0\u05dc\u05de\u05d5\u05e0\u05d9")]
    [InlineData("\u062f\u0644\u064a\u0644 \u0648\u0647\u0645\u064a\u060c \u0667", "\u0644\u0627 \u0623\u062d\u062f")]
    public void Confirming_AtMost_InScriptFromRightToLeft_KeepsEveryLetter(string source, string name)
    {
        var set = (LimitSet)LimitActs.Confirm(_job, "pinion-runout", new("", "0.004 in", $" {source} "), $" {name} ", SampleRecords.Start);

        Assert.Equal((source, name), (set.Limit.Source, set.Limit.ConfirmedBy));
        Assert.Equal($"confirmed the limit at most 0.004 in: {source}", BookSentence.Of(set));
        Assert.Equal($"{source}; confirmed by {name}", LimitSentence.All(set.Limit));
    }

    [Theory]
    [InlineData("the manual")]
    [InlineData("page")]
    [InlineData("12")]
    [InlineData(" ")]
    [InlineData(null)]
    public void Confirming_WithoutManualAndPage_IsRefused(string? source) =>
        Assert.Equal("source", Assert.Throws<BookRefusalException>(() => Confirm(new("", "0.004 in", source))).Field);

    [Fact]
    public void Setting_DoesNotConfirm() =>
        Assert.False(((LimitSet)LimitActs.Set(_job, "pinion-runout", new("0.1 mm", "0.2 mm", "common practice, no source"))).Limit.Confirmed);

    [Theory]
    [InlineData("at_most", "0.2 mm", "0.1 mm", "", "At least does not lie below at most: swap them")]
    [InlineData("at_most", "", "0.1", "", "At most '0.1' is no length. Give the length with its unit")]
    [InlineData("at_most", "", "", "", "A limit has a smallest value, a largest one, or both.")]
    [InlineData("drive", "", "0.1 mm", "belt", "Drive 'belt' is not known")]
    public void Limit_ThatCannotBe_IsRefusedByField(string field, string atLeast, string atMost, string drive, string sentence)
    {
        var refusal = Assert.Throws<BookRefusalException>(() => LimitActs.Set(_job, "pinion-runout", new(atLeast, atMost, "invented", drive)));

        Assert.Equal(field, refusal.Field);
        Assert.StartsWith(sentence, refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Limit_OfAPointThatIsNotThere_IsNotFound() => Assert.Throws<JobNotFoundException>(() => LimitActs.Set(_job, "no-such", new("", "1 mm", "invented")));

    private LimitSet Confirm(TypedLimit typed) => (LimitSet)LimitActs.Confirm(_job, "pinion-runout", typed, " A. Nobody ", SampleRecords.Start);
}
