using Handspun.Pictures.Lettering;

namespace Handspun.Pictures.Tests.Lettering;

public sealed class TypefacesTests
{
    [Theory]
    [InlineData("TIR 0.0023 in ± 0.0002 in (k = 2)")]
    [InlineData("\u22120.001 · 214° … µm × ≤ ÄÖÜéñß")]
    public void BothWeights_OfTheFontThatComesAlong_HaveTheLettersOfThePictures(string text)
    {
        Assert.True(Typefaces.Regular.ContainsGlyphs(text));
        Assert.True(Typefaces.Strong.ContainsGlyphs(text));
    }

    [Fact]
    public void Font_ThatIsMissing_IsNamedInASentence()
    {
        var missing = Assert.Throws<MissingFontException>(() => Typefaces.Load(Path.GetTempPath(), "no-such-font.ttf"));
        Assert.Contains("no-such-font.ttf is missing or damaged", missing.Message, StringComparison.Ordinal);
        Assert.EndsWith("no-such-font.ttf", missing.Path, StringComparison.Ordinal);
    }

    [Fact]
    public void Font_ThatIsNoFont_IsTakenAsMissing()
    {
        var folder = Directory.CreateTempSubdirectory().FullName;
        try
        {
            File.WriteAllText(Path.Combine(folder, "damaged.ttf"), "not a font");
            Assert.Throws<MissingFontException>(() => Typefaces.Load(folder, "damaged.ttf"));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void Licence_OfTheFont_LiesBesideIt() => Assert.Contains(
        "SIL OPEN FONT LICENSE",
        File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "fonts", "Barlow-OFL.txt")),
        StringComparison.Ordinal);
}
