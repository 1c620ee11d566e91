using Handspun.Jobs.Lengths;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Records;
using Handspun.Metrology.Decision;

namespace Handspun.Jobs.Tests.Records;

public class RecordSentenceTests
{
    [Theory]
    [InlineData(Verdict.Within, "0.0020 in ± 0.0003 in: within the limit (at most 0.0050 in).", "within the limit")]
    [InlineData(Verdict.Over, "0.0020 in ± 0.0003 in: over the limit (at most 0.0050 in).", "over the limit")]
    [InlineData(
        Verdict.Undecided,
        "0.0020 in ± 0.0003 in: too close to call, the limit (at most 0.0050 in) lies inside the uncertainty. Measure again with more turns or a finer gauge.",
        "too close to call")]
    public void Record_WithAVerdict_SaysWhatWasFoundAndWhatItMeans(Verdict verdict, string sentence, string word)
    {
        var record = Record(verdict, SampleRecords.Limit);

        Assert.Equal(sentence, RecordSentence.Of(record, LengthUnit.Inch));
        Assert.Equal(word, RecordSentence.VerdictOf(record));
    }

    [Fact]
    public void Record_InMillimetres_IsSaidInMillimetres() => Assert.Equal(
        "0.051 mm ± 0.006 mm: within the limit (at most 0.127 mm).",
        RecordSentence.Of(Record(Verdict.Within, SampleRecords.Limit), LengthUnit.Millimetre));

    [Fact]
    public void Record_WithoutALimit_SaysThatThereIsNone()
    {
        var record = Record(null, null);

        Assert.Equal("0.0020 in ± 0.0003 in. There is no limit to hold it against.", RecordSentence.Of(record, LengthUnit.Inch));
        Assert.Equal("no limit to hold it against", RecordSentence.VerdictOf(record));
    }

    [Fact]
    public void Record_WithoutAResult_SaysWhatIsMissing()
    {
        var record = SampleRecords.Incomplete("c1");

        Assert.Equal("About 0.4 of a turn was seen.", RecordSentence.Of(record, LengthUnit.Inch));
        Assert.Equal("no result", RecordSentence.VerdictOf(record));
        Assert.Null(RecordSentence.Value(record, LengthUnit.Inch));
    }

    [Fact]
    public void Codes_OfEveryState_AreDistinctWordsOfDataFiles()
    {
        string[] codes = [.. Enum.GetValues<CaptureEnding>().Select(RecordCodes.Of), .. Enum.GetValues<RecordStatus>().Select(RecordCodes.Of)];

        Assert.Equal(codes.Length, codes.Distinct().Count());
        Assert.All(codes, code => Assert.Matches("^[a-z]+(-[a-z]+)*$", code));
        Assert.Throws<ArgumentOutOfRangeException>(() => RecordCodes.Of((CaptureEnding)99));
    }

    [Fact]
    public void Warnings_AreACodeAndASentence() => Assert.All(
        new[] { RecordWarning.LimitUnconfirmed, RecordWarning.GaugeGap, RecordWarning.UnreadableLines },
        warning =>
        {
            Assert.Matches("^[a-z]+(-[a-z]+)*$", warning.Code);
            Assert.Matches("^[A-Z].*\\.$", warning.Sentence);
        });

    private static CaptureRecord Record(Verdict? verdict, Limit? limit)
    {
        var sample = SampleRecords.Complete("c1");
        return new CaptureRecord
        {
            Id = sample.Id,
            At = sample.At,
            Seconds = sample.Seconds,
            Ending = sample.Ending,
            Status = sample.Status,
            Gauge = sample.Gauge,
            Figures = sample.Figures,
            Limit = limit,
            Verdict = verdict,
        };
    }
}
