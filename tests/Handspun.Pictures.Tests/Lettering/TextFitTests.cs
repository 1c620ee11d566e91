using CsCheck;
using Handspun.Pictures.Lettering;
using SkiaSharp;

namespace Handspun.Pictures.Tests.Lettering;

public sealed class TextFitTests
{
    private static readonly TextStyle Style = new(14, SKColors.Black);

    [Fact]
    public void OneLine_OfShortText_IsTheText() => Assert.Equal("Pinion shaft", TextFit.OneLine("Pinion shaft", 400, Style));

    [Fact]
    public void OneLine_OfLongText_EndsInAnEllipsisAndFits()
    {
        var line = TextFit.OneLine("Pinion shaft runout, measured a second time", 120, Style);
        Assert.StartsWith("Pinion", line, StringComparison.Ordinal);
        Assert.EndsWith("…", line, StringComparison.Ordinal);
        Assert.True(Letters.Width(line, Style) <= 120);
    }

    [Fact]
    public void Lines_OfAnyText_FitAndLoseNoWord() => Gen.String[Gen.Char[" abcdefgh"], 0, 120].Sample(text =>
    {
        var lines = TextFit.Lines(text, 900, Style);
        Assert.Equal(text.Split(' ', StringSplitOptions.RemoveEmptyEntries), lines.SelectMany(line => line.Split(' ')));
    });

    [Fact]
    public void Plain_OfAnyText_IsFitForXml() => Gen.String.Sample(text =>
        Assert.All(TextFit.Plain(text).EnumerateRunes(), rune => Assert.True(rune.Value >= 32 && rune.Value is not 0xFFFE and not 0xFFFF)));

    [Fact]
    public void Drawable_OfLettersTheFontsLack_ShowsThatSomethingWasThere() => Assert.Equal("Job ??", TextFit.Drawable("Job 日\uD83D\uDD27"));
}
