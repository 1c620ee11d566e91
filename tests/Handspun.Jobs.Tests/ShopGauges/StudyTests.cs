using System.Globalization;
using Handspun.Jobs.ShopGauges;

namespace Handspun.Jobs.Tests.ShopGauges;

public class StudyTests
{
    // The published study of ten parts (its source stands in the file). The manual prints 27.9 % and 4.875 categories by pooled analysis of variance.
    [Fact]
    public void Study_ThatWasTypedInLines_HasThePrintedShareAndCategories()
    {
        Assert.Null(StudyLines.Read(Published(), out var sheet));

        var result = sheet!.Work();
        Assert.Equal((3, 10), (sheet.Mechanics.Count, sheet.Parts.Count));
        Assert.Equal(27.9, result.GaugePercent, 0.05);
        Assert.Equal(4, result.Categories);
        Assert.Equal("Gauge and hands make up 27.9 % of all the spread. That may do, where nothing better is at hand. Most of it is between the mechanics: agree on how the gauge is held and read. It tells these parts into 4 groups; 5 or more are wanted.", GaugeWords.Study(result));
    }

    [Fact]
    public void Study_InInches_IsTheSameStudy()
    {
        StudyLines.Read(Published(), out var millimetres);
        StudyLines.Read(Published().Replace("mm", "in", StringComparison.Ordinal), out var inches);

        Assert.Equal(millimetres!.Work().GaugePercent, inches!.Work().GaugePercent, 1e-9);
        Assert.Equal(25.4 * millimetres.Work().Total.Millimetres, inches.Work().Total.Millimetres, 1e-9);
    }

    [Theory]
    [InlineData("", "Write a line for each mechanic and part")]
    [InlineData("A; 1", "Line 1 does not name a mechanic, a part and readings")]
    [InlineData("A; 1; 5.0 5.1 mm\n\nA; 2; 5.0 x mm", "Line 3: 'x mm' is no reading")]
    [InlineData("A; 1; 5.0 5.1", "Line 1: The readings have no unit")]
    [InlineData("A; 1; 5.0 5.1 mm\nA; 1; 5.0 mm", "Line 2: A and part 1 stand there twice")]
    [InlineData("A; 1; 5 5.1 mm\nA; 2; 5 5.1 mm\nB; 1; 5 5.1 mm", "B did not measure part 2")]
    [InlineData("A; 1; 5 5.1 mm\nA; 2; 5 5.1 mm\nB; 1; 5 5.1 mm\nB; 2; 5 mm", "B measured part 2 1 times where others took 2")]
    [InlineData("A; 1; 5 5.1 mm\nA; 2; 5 5.1 mm", "let another one measure the same parts")]
    [InlineData("A; 1; 5 mm\nA; 2; 5 mm\nB; 1; 5 mm\nB; 2; 5 mm", "let everyone measure every part again")]
    public void Study_ThatDoesNotHold_IsToldWithItsLineAndWhatToDo(string lines, string words) =>
        Assert.Contains(words, StudyLines.Read(lines, out _), StringComparison.Ordinal);

    [Fact]
    public void Study_AsATableThatDoesNotHold_IsTold()
    {
        StudySheet sheet = new() { Mechanics = ["A", "B"], Parts = ["1", "2"], ValuesMillimetres = [[[1, 2], [1, 2]], [[1, 2], [1, 2]]] };
        Assert.Null(sheet.Problem());
        (StudySheet Sheet, string Words)[] cases =
        [
            (sheet with { Mechanics = ["A", "A"] }, "have the same name"),
            (sheet with { Parts = ["1", ""] }, "has a name"),
            (sheet with { Mechanics = ["A", "B", "C"] }, "3 mechanics and values of 2"),
            (sheet with { Parts = ["1", "2", "3"] }, "A measured 2 parts of 3"),
            (sheet with { ValuesMillimetres = [[[1, 2], [1, double.NaN]], [[1, 2], [1, 2]]] }, "measure that part again"),
        ];

        Assert.All(cases, each =>
        {
            Assert.Contains(each.Words, each.Sheet.Problem(), StringComparison.Ordinal);
            Assert.Throws<ArgumentException>(each.Sheet.Work);
        });
    }

    private static string Published() => string.Join('\n', File.ReadLines(Path.Combine(AppContext.BaseDirectory, "study-10x3x3.csv"))
        .Where(line => line.Length > 0 && line[0] != '#')
        .Select(line => line.Split(','))
        .GroupBy(row => (Mechanic: row[0], Part: row[1]), row => double.Parse(row[3], CultureInfo.InvariantCulture))
        .Select(cell => string.Create(CultureInfo.InvariantCulture, $"{"ABC"[int.Parse(cell.Key.Mechanic, CultureInfo.InvariantCulture) - 1]}; {cell.Key.Part}; {string.Join(' ', cell.Select(value => value.ToString(CultureInfo.InvariantCulture)))} mm")));
}
