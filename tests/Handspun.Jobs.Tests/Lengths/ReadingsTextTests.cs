using Handspun.Jobs.Lengths;

namespace Handspun.Jobs.Tests.Lengths;

public class ReadingsTextTests
{
    [Theory]
    [InlineData("5.001 5.002 mm", new[] { 5.001, 5.002 })]
    [InlineData(" 5,001;5,002  mm ", new[] { 5.001, 5.002 })]
    [InlineData("5.001 mm 5.002 mm", new[] { 5.001, 5.002 })]
    [InlineData("-0.001 +0.002 \u22120.003 mm", new[] { -0.001, 0.002, -0.003 })]
    [InlineData("1 in 1 mm", new[] { 25.4, 1.0 })]
    [InlineData("1 2 in", new[] { 25.4, 50.8 })]
    public void Readings_WithAUnitBehindTheLast_AreRead(string text, double[] millimetres)
    {
        Assert.Null(ReadingsText.Read(text, out var lengths));
        Assert.Equal(millimetres, lengths.Select(length => Math.Round(length.Millimetres, 9)));
    }

    [Theory]
    [InlineData("", "'' is no reading")]
    [InlineData(null, "'' is no reading")]
    [InlineData("5.001 5.002", "have no unit")]
    [InlineData("5.001 abc mm", "'abc mm' is no reading")]
    [InlineData("5.001 mm NaN", "'NaN' is no reading")]
    [InlineData("5.001 cm", "is no reading")]
    public void Readings_ThatDoNotHold_AreToldWithHowToWriteThem(string? text, string words)
    {
        var problem = ReadingsText.Read(text, out var lengths);

        Assert.Contains(words, problem, StringComparison.Ordinal);
        Assert.EndsWith(ReadingsText.HowToWrite, problem, StringComparison.Ordinal);
        Assert.Empty(lengths);
    }

    [Theory]
    [InlineData("-0.15 µm", -0.00015)]
    [InlineData("+0.2um", 0.0002)]
    [InlineData("\u22120.001 in", -0.0254)]
    [InlineData("0.127 mm", 0.127)]
    public void Length_ThatMayBeBelowZero_IsRead(string text, double millimetres)
    {
        Assert.True(LengthText.TryParseSigned(text, out var length));
        Assert.Equal(millimetres, length.Millimetres, 1e-12);
    }

    [Theory]
    [InlineData("0.15")]
    [InlineData("--1 mm")]
    [InlineData("1.2.3 mm")]
    [InlineData("")]
    [InlineData(null)]
    public void Length_ThatIsNone_IsNotRead(string? text) => Assert.False(LengthText.TryParseSigned(text, out _));
}
