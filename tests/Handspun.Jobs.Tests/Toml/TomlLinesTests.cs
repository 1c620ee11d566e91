using CsCheck;
using Handspun.Jobs.Toml;
using Tomlyn;
using Tomlyn.Model;

namespace Handspun.Jobs.Tests.Toml;

public sealed class TomlLinesTests
{
    [Theory]
    [InlineData("", "unit = \"mm\"\n")]
    [InlineData("# ours\n", "# ours\nunit = \"mm\"\n")]
    [InlineData("a = 1", "a = 1\nunit = \"mm\"\n")]
    [InlineData("unit = \"in\" # as on the drawings\na = 1\n", "unit = \"mm\" # as on the drawings\na = 1\n")]
    [InlineData("a = 1\r\n", "a = 1\r\nunit = \"mm\"\r\n")]
    [InlineData("a = 1\n\n[other]\nunit = \"in\"\n", "a = 1\n\nunit = \"mm\"\n\n[other]\nunit = \"in\"\n")]
    public void Value_IsSet_AndAllElseStays(string toml, string expected) => Assert.Equal(expected, TomlLines.Set(toml, "unit", "\"mm\""));

    [Fact]
    public void List_OverSeveralLines_IsReplacedWhole() => Assert.Equal(
        "names = [\"C\"]\nb = 2\n",
        TomlLines.Set("names = [\n  \"A\", # first\n  \"B\",\n]\nb = 2\n", "names", TomlLines.Quoted(["C"])));

    [Theory]
    [InlineData("a = 1\nabout = \"x\" # y\nb = 2\n", "a = 1\nb = 2\n")]
    [InlineData("about = \"x\"", "")]
    [InlineData("b = 2\n", "b = 2\n")]
    public void Key_IsTakenOut_WithItsLine(string toml, string expected) => Assert.Equal(expected, TomlLines.Set(toml, "about", null));

    // Another library's reader is the judge of what was written.
    [Fact]
    public void AnyText_ReadsBackAsItWas() =>
        Gen.String.Where(text => text.All(letter => !char.IsSurrogate(letter))).Sample(text =>
        {
            var written = TomlLines.Set("# first\nb = 2\n", "a", TomlLines.Quoted(text));
            Assert.Equal(text, TomlSerializer.Deserialize<TomlTable>(written)!["a"]);
        });
}
