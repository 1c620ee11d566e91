using Handspun.Jobs.Cranks;

namespace Handspun.Jobs.Tests.Cranks;

public class CrankSheetTests
{
    private static readonly CrankSheet Sheet = new() { BetweenBearingsMillimetres = 120, DivisionMillimetres = 1, CrankpinDegrees = 30, CrankpinDivisionDegrees = 5 };

    [Fact]
    public void Sheet_ThatCanBeUsed_HasNoProblems()
    {
        Assert.Empty(Sheet.Problems());
        Assert.Empty((Sheet with { CrankpinDegrees = null, CrankpinDivisionDegrees = 0 }).Problems());
    }

    [Theory]
    [InlineData(0, 1, "distance between the middles of the two bearings")]
    [InlineData(-120, 1, "distance between the middles of the two bearings")]
    [InlineData(double.NaN, 1, "distance between the middles of the two bearings")]
    [InlineData(1000, 1, "less than a metre")]
    [InlineData(120, 0, "division of the tool")]
    [InlineData(120, 120, "less than the distances themselves")]
    [InlineData(120, double.NaN, "division of the tool")]
    public void Distances_ThatCannotBe_AreToldWithWhatToDo(double between, double division, string words) =>
        Told(Sheet with { BetweenBearingsMillimetres = between, DivisionMillimetres = division }, words);

    [Theory]
    [InlineData(-1, 5, "from 0 to less than 360")]
    [InlineData(360, 5, "from 0 to less than 360")]
    [InlineData(double.NaN, 5, "from 0 to less than 360")]
    [InlineData(30, 0, "division of the degree wheel")]
    [InlineData(30, 91, "at most 90")]
    public void Crankpin_ThatCannotBe_IsToldWithWhatToDo(double degrees, double division, string words) =>
        Told(Sheet with { CrankpinDegrees = degrees, CrankpinDivisionDegrees = division }, words);

    private static void Told(CrankSheet sheet, string words)
    {
        Assert.Contains(sheet.Problems(), problem => problem.Contains(words, StringComparison.Ordinal));
        Assert.All(sheet.Problems(), problem => Assert.Matches("^Give .*\\.$", problem));
    }
}
