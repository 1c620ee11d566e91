using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Tests.Readings;

public class GaugeNameTests
{
    [Theory]
    [InlineData("pinion")]
    [InlineData("a")]
    [InlineData("bore-2")]
    [InlineData("a1234567890123456789012345678901")]   // 32 characters
    public void Name_OfLettersDigitsAndHyphens_IsOne(string text)
    {
        Assert.True(GaugeName.TryParse(text, out var name));
        Assert.Equal(text, name.ToString());
        Assert.Equal(GaugeName.Parse(text), name);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("2nd")]
    [InlineData("-pinion")]
    [InlineData("Pinion")]
    [InlineData("pin ion")]
    [InlineData("pinion\n")]   // it would stand in a topic and in a folder's name
    [InlineData("../pinion")]
    [InlineData("pinion/#")]
    [InlineData("pinión")]
    [InlineData("a12345678901234567890123456789012")]   // 33 characters
    public void Name_OfAnythingElse_IsNone(string? text)
    {
        Assert.False(GaugeName.TryParse(text, out var name));
        Assert.Equal("", name.ToString());
    }

    [Fact]
    public void Parse_OfNoName_SaysWhatANameIs()
    {
        var refused = Assert.Throws<FormatException>(() => GaugeName.Parse("Pinion Gauge"));
        Assert.Contains("'Pinion Gauge'", refused.Message, StringComparison.Ordinal);
        Assert.Contains("lower-case letters, digits and hyphens", refused.Message, StringComparison.Ordinal);
    }
}
