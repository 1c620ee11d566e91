using System.Globalization;
using Handspun.Terminal;

namespace Handspun.Tests.Terminal;

public sealed class TerminalTests
{
    [Fact]
    public void Columns_AreAsWideAsTheyHaveToBe() =>
        Assert.Equal(["a    bb  c", "ccc  d"], Columns.Of([["a", "bb", "c"], ["ccc", "d", ""]]));

    [Theory]
    [InlineData(12, "one two", "  three four")]
    [InlineData(100, "one two three four")]
    [InlineData(3, "one", "  two", "  three", "  four")]
    public void Sentence_IsBrokenBetweenWords_AndSetIn(int width, params string[] lines) =>
        Assert.Equal(lines, Columns.Wrap("one two three four", width, "  "));

    [Fact]
    public void Paint_ColoursOnlyWhereThereAreColours()
    {
        Assert.Equal("\u001b[32mgood\u001b[0m", new Paint(colours: true).Good("good"));
        Assert.Equal("good", new Paint(colours: false).Good("good"));
        Assert.Equal("", new Paint(colours: true).Faint(""));
    }

    [Fact]
    public void LiveLines_AreDrawnOverOneAnother_OnATerminalOnly()
    {
        Assert.Equal("a\nb\nc\n", Shown(redraws: false));
        Assert.Equal("a\u001b[K\nb\u001b[K\n\u001b[J\u001b[2Ac\u001b[K\n\u001b[J", Shown(redraws: true));
    }

    private static string Shown(bool redraws)
    {
        using var output = new StringWriter(CultureInfo.InvariantCulture);
        var lines = new LiveLines(output, redraws);
        lines.Show(["a", "b"]);
        lines.Show(["c"]);
        return output.ToString().ReplaceLineEndings("\n");
    }
}
