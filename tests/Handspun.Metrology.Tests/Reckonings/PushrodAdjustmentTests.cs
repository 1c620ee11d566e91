using System.Globalization;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Reckonings;
using Handspun.Metrology.Tests.Reference;

namespace Handspun.Metrology.Tests.Reckonings;

public class PushrodAdjustmentTests
{
    // Against ASME B1.1, as copied in unified-threads.csv.
    [Fact]
    public void ThreadPitch_OfEveryUnifiedThread_IsThatOfTheStandard()
    {
        var table = ReferenceData.Rows("unified-threads.csv").ToDictionary(
            row => row[0] == 0 ? $"#{row[1]}-{row[2]}" : string.Create(CultureInfo.InvariantCulture, $"{row[0]}/{row[1]}-{row[2]}"));

        Assert.NotEmpty(ThreadPitch.Unified);
        foreach (var thread in ThreadPitch.Unified)
        {
            Assert.Equal(table[thread.Name][3], thread.PerTurn.Millimetres, 5e-7);
            Assert.Equal(table[thread.Name][4], thread.PerTurn.Millimetres / PushrodAdjustment.Flats, 5e-7);
        }
    }

    [Fact]
    public void PushrodAdjustment_OfAPreload_ShowsTurnsFlatsAndWhatWholeFlatsGive()
    {
        var thread = ThreadPitch.Unified.Single(one => one.Name == "5/16-24");

        var answer = PushrodAdjustment.FromNoPlay(In(0.1, 0.005), thread);

        // 0.1 in × 24 threads = 2.4 turns = 14.4 flats; 14 flats = 14/6/24 in.
        Assert.Null(answer.Missing);
        Assert.Equal(2.4, answer.Lines[0].Result.Value, 1e-12);
        Assert.Equal(14.4, answer.Lines[1].Result.Value, 1e-12);
        Assert.Equal(14.0 / 6 / 24 * 25.4, answer.Answer!.Result.Value, 1e-12);
        Assert.Equal("0.1000 in ÷ 0.0417 in = 2.40 turns ± 0.12 turns", answer.Lines[0].Filled(ShownUnit.Inches));
        Assert.Equal("2.400 turns × 6 = 14.4 flats ± 0.7 flats", answer.Lines[1].Filled(ShownUnit.Millimetres));
        Assert.Equal("14 flats × 0.176 mm = 2.469 mm ± 0.127 mm", answer.Lines[2].Filled(ShownUnit.Millimetres));
    }

    [Fact]
    public void PushrodAdjustment_Always_WarnsOfTurningPushrodsChipsAndLifters()
    {
        var cautions = string.Join(' ', PushrodAdjustment.FromNoPlay(In(0.1, 0), null).Cautions);

        Assert.Contains("both pushrods of that cylinder turn freely", cautions, StringComparison.Ordinal);
        Assert.Contains("never with a grinder", cautions, StringComparison.Ordinal);
        Assert.Contains("turn by hand only", cautions, StringComparison.Ordinal);
        Assert.Contains("manual", cautions, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.1, false, "thread is missing")]
    [InlineData(2.5, true, "on such engines")]
    [InlineData(-0.1, true, "on such engines")]
    [InlineData(0.002, true, "looks like inches")]
    public void PushrodAdjustment_OfWhatCannotBe_SaysWhatToDo(double inches, bool withThread, string words)
    {
        var answer = PushrodAdjustment.FromNoPlay(In(inches, 0), withThread ? ThreadPitch.FromThreadsPerInch(32) : null);

        Assert.Null(answer.Answer);
        Assert.Contains(words, answer.Missing, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1.25)]
    [InlineData(double.NaN)]
    public void ThreadPitch_FromACountThatCannotBe_Refuses(double threads) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ThreadPitch.FromThreadsPerInch(threads));

    private static Measured<Length> In(double value, double u95) => new(Length.FromInches(value), Length.FromInches(u95));
}
