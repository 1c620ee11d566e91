using Handspun.Capture.Finishing;
using Handspun.Capture.Tests.Bays;
using Handspun.Gauges.Journal;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Points;

namespace Handspun.Capture.Tests.Finishing;

public sealed class JournalledTaskTests
{
    [Fact]
    public void Task_WrittenAndRead_IsTheSame()
    {
        var limit = new Limit { LowerMillimetres = 21.4, UpperMillimetres = 21.425, Source = "manual, page 3-12", ConfirmedBy = "Ines" };
        var setup = new BoreSetup { SettingMillimetres = 21.41, SettingU95Millimetres = 0.002, DepthMillimetres = 12, ClockHours = 3 };

        var read = JournalledTask.Read(JournalledTask.TextOf(BayBench.Point with { Kind = PointKind.Bore, Wanted = 6, Setup = setup, Limit = limit }));

        Assert.Equal(new JournalledTask { Kind = "bore", Wanted = 6, Setup = setup, Limit = limit, LastCheck = BayBench.Point.LastCheck }, read);
    }

    [Fact]
    public void Journal_OfAnEarlierVersion_HasNoTask() => Assert.Null(JournalledTask.Read(null));

    [Theory]
    [InlineData("""{"kind":"bore","wanted":6,"setup":{"kind":"tomorrow"}}""")]
    [InlineData("""{"wanted":6}""")]
    [InlineData("""{"kind":"bore","wanted":"six"}""")]
    public void Task_OfALaterVersion_IsRefusedInASentence(string text) =>
        Assert.Contains("version that wrote it", Assert.Throws<JournalException>(() => JournalledTask.Read(text)).Message, StringComparison.Ordinal);
}
