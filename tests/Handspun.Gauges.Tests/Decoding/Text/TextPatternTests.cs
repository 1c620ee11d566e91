using System.Text;
using System.Text.RegularExpressions;
using CsCheck;
using Handspun.Gauges.Decoding;
using Handspun.Gauges.Decoding.Text;
using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Tests.Decoding.Text;

public class TextPatternTests
{
    [Theory]
    [InlineData(@"ch=[0-9]+;v=(?<value>-?[0-9.]+);u=(?<unit>[a-z]+)", "ch=12;v=-1.5;u=in", true, -1.5, GaugeUnit.Inch)]
    [InlineData(@"^(?<sign>[+-])\s*(?<value>[0-9]+\.[0-9]+)\s?(?<unit>mm|in)?$", "- 1.5 mm", true, -1.5, GaugeUnit.Millimetre)]
    [InlineData(@"^(?<sign>[+-])\s*(?<value>[0-9]+\.[0-9]+)\s?(?<unit>mm|in)?$", "+1.5", true, 1.5, null)]
    [InlineData(@"[a-z(|)]*\((?<value>[0-9.]+)\)", "a(|)(2.5)", true, 2.5, null)]   // the first choice of the part takes too much
    [InlineData(@".*(?<value>[0-9]\.[0-9])", "12 9.5", true, 9.5, null)]
    [InlineData(@"(?:a(?<value>[0-9]+)|b(?<value>[0-9]+))", "b7", false, 7.0, null)]
    [InlineData(@"x(?<value>[0-9]+)|y", "x7", false, 7.0, null)]
    [InlineData(@"(?<value>[0-9]+)\b.*", "12 x", false, 12.0, null)]
    [InlineData(@"(?i)V(?<value>[0-9]+)", "v12", false, 12.0, null)]
    [InlineData(@"(?'value'[0-9]+)", "12", false, 12.0, null)]
    public void Pattern_InPartsOrWhole_FindsItsGroups(string pattern, string text, bool apart, double value, GaugeUnit? unit)
    {
        var made = new TextPattern(pattern);

        Assert.Equal(apart, made.IsTakenApart);
        Assert.Equal(FrameResult.Of(value, unit), new TextPatternDecoding(new(), made).Decode(Encoding.Latin1.GetBytes(text)));
    }

    [Theory]
    [InlineData("ch=1;v=1.5")]
    [InlineData("ch=1;v=1.5;u=")]
    [InlineData("xch=1;v=1.5;u=mm")]
    [InlineData("ch=1;v=1.5;u=mm;")]
    public void Text_ThatIsNotAllOfThePattern_IsNoMatch(string text) =>
        Assert.Equal(FrameFault.NoMatch, new TextPatternDecoding(new(), new(@"ch=[0-9]+;v=(?<value>[0-9.]+);u=(?<unit>[a-z]+)")).Decode(Encoding.Latin1.GetBytes(text)).Fault);

    // The library's backtracking engine, which these patterns cannot send astray, is the judge.
    [Fact]
    public void Pattern_OfAnyParts_FindsWhatTheWholePatternFinds() => Gen.Select(
        Gen.OneOf("a", "b*", "[ab]+", "(?:a|ab)", "a?", ".", ".*?", "(?:b{1,2})").Array[1, 3],
        Gen.OneOf("[ab]+", "a+", "b?", ".*", "(?:ab)+", "a|b"),
        Gen.OneOf("", "b", "a*", ".?"),
        Gen.Char["abc"].Array[0, 8])
        .Sample((before, value, behind, letters) =>
        {
            var pattern = $"{string.Concat(before)}(?<value>{value}){behind}";
            var text = new string(letters);
            var expected = Regex.Match(text, $@"\A(?:{pattern})\z", RegexOptions.CultureInvariant);

            Assert.Equal(expected.Success, new TextPattern(pattern).TryMatch(text, out var found));
            Assert.Equal(expected.Groups["value"].Value, found.Value.ToString());
        });

    [Theory]
    [InlineData(@"(?<value>(a+)+)b\1")]
    [InlineData(@"(?<value>[0-9]+)(?=mm)")]
    [InlineData(@"(?<value>((a{99}){99}){99})")]
    [InlineData(@"(?>(?<value>a+))")]
    public void Pattern_ThatCouldTakeExponentialTimeOrRoom_IsRefused(string pattern) =>
        Assert.Throws<NotSupportedException>(() => new TextPattern(pattern));

    // With a backtracking engine this would take longer than the world is old.
    [Fact]
    public void Pattern_ThatIsExponentialElsewhere_EndsAtOnceHere() =>
        Assert.False(new TextPattern(@"(?<value>(?:(?:a+)+)+)b").TryMatch(new string('a', 250), out _));
}
