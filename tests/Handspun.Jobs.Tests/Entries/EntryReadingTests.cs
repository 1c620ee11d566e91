using Handspun.Jobs.Entries;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Metrology.Decision;
using Microsoft.Extensions.Time.Testing;

namespace Handspun.Jobs.Tests.Entries;

public class EntryReadingTests
{
    private static readonly TypedEntry Micrometer = new() { Tool = "micrometer", Division = "0.01 mm", ErrorLimit = "0.004 mm", By = "Ines" };

    // A rectangle as wide as the division has a standard deviation of division / √12, and one of ± the limit of limit / √3
    // (JCGM 100:2008, F.2.2.1 and 4.3.7); k = 2.
    [Fact]
    public void Size_TypedOnce_HasTheUncertaintyOfDivisionAndErrorLimit()
    {
        var read = EntryReading.Of(Point("lifter-body-front-intake"), Micrometer with { Value = "21,39 mm" });

        Assert.Empty(read.Problems);
        var size = Assert.IsType<SizeFigures>(read.Figures);
        Assert.Equal((21.39, PointKind.OutsideSize, "once", "21,39 mm", "Ines"), (size.SizeMillimetres, size.Kind, size.Way, size.Typed, size.ReadBy));
        Assert.Equal(2 * Math.Sqrt(0.01 * 0.01 / 12 + 0.004 * 0.004 / 3), size.SizeU95Millimetres, 12);
        Assert.Equal(size.SizeMillimetres, size.AbsoluteSize!.Value.Size.Millimetres);
        Assert.Equal(("micrometer", "by-hand", 0.01, 0.004), (read.Tool!.Name, read.Tool.Profile, read.Tool.ResolutionMillimetres, read.Tool.ErrorLimitMillimetres));
        Assert.Empty(read.Warnings);
    }

    [Fact]
    public void Number_WithoutAUnit_TakesTheOneThatWasChosen()
    {
        var read = EntryReading.Of(Point("lifter-bore-rear-exhaust"), Micrometer with { Value = "0.8427", Division = "0.0001", ErrorLimit = null, Unit = "in" });

        var size = Assert.IsType<SizeFigures>(read.Figures);
        Assert.Equal(0.8427 * 25.4, size.SizeMillimetres, 12);
        Assert.Equal(PointKind.Bore, size.Kind);
        Assert.Equal("0.8427 in", read.Figures!.Typed);
        Assert.Equal("tool-error-unknown", Assert.Single(read.Warnings).Code);
    }

    [Theory]
    [InlineData("0.9 mm", "too small for a lifter body, but 0.9 in would be")]
    [InlineData("21.4 in", "too large for a lifter body, but 21.4 mm would fit")]
    [InlineData("210 mm", "cannot be a lifter body")]
    [InlineData("21.4", "is no length. Give the number with its unit")]
    [InlineData("abc mm", "is no length")]
    [InlineData("-21.4 mm", "is below zero")]
    [InlineData("0 mm", "has to be above zero")]
    [InlineData("", "type what the tool shows")]
    public void Size_ThatCannotBe_IsRefusedAtItsField(string typed, string sentence)
    {
        var read = EntryReading.Of(Point("lifter-body-front-intake"), Micrometer with { Value = typed });

        Assert.Null(read.Figures);
        Assert.Contains(sentence, read.Problems["value"], StringComparison.Ordinal);
    }

    [Fact]
    public void Fields_ThatAreMissingOrCannotBe_AreAllNamedAtOnce()
    {
        var read = EntryReading.Of(Point("tensioner-shoe-thickness"), new TypedEntry { Value = "4.2 mm", Division = "5 mm", Tool = new string('x', 61) });

        Assert.Equal(["by", "division", "tool"], read.Problems.Keys.Order());
        Assert.Contains("too coarse", read.Problems["division"], StringComparison.Ordinal);
        Assert.Contains("Say who read it.", read.Problems["by"], StringComparison.Ordinal);
    }

    // Anywhere between the leaf that goes and the one that does not: a rectangle of that width (JCGM 100:2008, 4.3.7).
    [Fact]
    public void Gap_ByLeaves_LiesBetweenTheTwo()
    {
        var read = EntryReading.Of(Point("pump-rotor-tip"), new TypedEntry { Goes = "0.08 mm", DoesNotGo = "0.10 mm", Tool = "feeler gauge", By = "Ines" });

        var gap = Assert.IsType<HandFigures>(read.Figures);
        Assert.Equal(0.09, gap.LengthMillimetres, 12);
        Assert.Equal(2 * 0.02 / Math.Sqrt(12), gap.LengthU95Millimetres, 12);
        Assert.Equal("0.08 mm goes, 0.10 mm does not", gap.Typed);
        Assert.Equal("Pump rotor tip clearance", gap.ValueTitle);
    }

    [Fact]
    public void Leaves_InTheWrongOrder_AreRefused() => Assert.Contains(
        "no thicker than the one that does",
        EntryReading.Of(Point("pump-rotor-tip"), new TypedEntry { Goes = "0.10 mm", DoesNotGo = "0.08 mm", Tool = "feeler gauge", By = "Ines" }).Problems["goes"],
        StringComparison.Ordinal);

    [Fact]
    public void Needle_AtARunout_IsHighestLessLowest_AndSaysThatAnEyeReadIt()
    {
        var read = EntryReading.Of(Point("pinion-runout"), new TypedEntry { Highest = "0.0015", Lowest = "-0.0015", Unit = "in", Tool = "dial indicator", Division = "0.0005", By = "Ines" });

        var runout = Assert.IsType<HandFigures>(read.Figures);
        Assert.Equal(0.003 * 25.4, runout.LengthMillimetres, 12);
        Assert.Equal(2 * Math.Sqrt(2 * Math.Pow(0.0005 * 25.4, 2) / 12), runout.LengthU95Millimetres, 12);
        Assert.Equal("Pinion shaft runout, read by eye", runout.ValueTitle);
        Assert.Equal(["read-by-eye", "tool-error-unknown"], read.Warnings.Select(warning => warning.Code));
    }

    [Theory]
    [InlineData("0.1 mm", "0.2 mm", "highest reading is below the lowest")]
    [InlineData("3.1 mm", "0.1 mm", "too large for a runout, but")]
    public void Needle_ThatCannotBe_IsRefused(string highest, string lowest, string sentence) => Assert.Contains(
        sentence,
        EntryReading.Of(Point("pinion-runout"), new TypedEntry { Highest = highest, Lowest = lowest, Tool = "dial indicator", Division = "0.01 mm", By = "Ines" }).Problems["highest"],
        StringComparison.Ordinal);

    [Fact]
    public void Clearance_IsNotTyped() => Assert.Contains(
        "worked out",
        EntryReading.Of(Point("lifter-clearance-front-intake"), Micrometer with { Value = "0.02 mm" }).Problems["value"],
        StringComparison.Ordinal);

    [Theory]
    [InlineData("5.00 mm", Verdict.Within)]
    [InlineData("4.001 mm", Verdict.Undecided)]
    [InlineData("3.90 mm", Verdict.Over)]
    public void Record_OfAnEntry_IsHeldAgainstThePointsLimit(string typed, Verdict verdict)
    {
        var point = Point("tensioner-shoe-thickness");
        point.Limit = new Limit { LowerMillimetres = 4, Source = "invented manual, page 7" };
        var time = new FakeTimeProvider(new DateTimeOffset(2026, 3, 14, 9, 0, 0, TimeSpan.Zero));

        var record = EntryRecord.Of(point, EntryReading.Of(point, Micrometer with { Value = typed }), time);

        Assert.Equal((verdict, RecordStatus.Complete, CaptureEnding.Typed, false), (record.Verdict, record.Status, record.Ending, record.HasFiles));
        Assert.StartsWith("20260314-090000-", record.Id, StringComparison.Ordinal);
        Assert.Contains(record.Warnings, warning => warning.Code == "limit-unconfirmed");
    }

    [Fact]
    public void EveryPoint_ThatIsNotWorkedOut_CanBeTyped() => Assert.All(
        PointCatalogue.All,
        point => Assert.Equal(point.Kind is PointKind.Clearance or PointKind.CamTiming, EntryReading.Ways(point.Code, point.Kind).Count == 0));

    private static JobPoint Point(string code)
    {
        var point = PointCatalogue.Find(code)!;
        return new JobPoint { Code = code, Title = point.Title, Kind = point.Kind };
    }
}
