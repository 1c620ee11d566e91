using SkiaSharp;

namespace Handspun.Pictures.Lettering;

/// <summary>The two weights of the font that the program brings along, read once.</summary>
/// <remarks>Typefaces do not change after loading, so any number of threads may draw with them.</remarks>
internal static class Typefaces
{
    private static readonly Lazy<SKTypeface> LoadedRegular = new(() => Load(Folder, "Barlow_400Regular.ttf"));
    private static readonly Lazy<SKTypeface> LoadedStrong = new(() => Load(Folder, "Barlow_600SemiBold.ttf"));

    /// <summary>For running text and numbers.</summary>
    public static SKTypeface Regular => LoadedRegular.Value;

    /// <summary>For titles and results.</summary>
    public static SKTypeface Strong => LoadedStrong.Value;

    /// <summary>Reads both, so that a font that is not there is found before anything is drawn.</summary>
    /// <exception cref="MissingFontException">One is not there.</exception>
    public static void Check() => _ = (Regular, Strong);

    private static string Folder => Path.Combine(AppContext.BaseDirectory, "fonts");

    /// <summary>Reads one font file.</summary>
    /// <exception cref="MissingFontException">There is no such file, or it holds no letters.</exception>
    internal static SKTypeface Load(string folder, string file)
    {
        var path = Path.Combine(folder, file);
        var typeface = File.Exists(path) ? SKTypeface.FromFile(path) : null;
        return typeface is not null && typeface.ContainsGlyphs("Aa09") ? typeface : throw new MissingFontException(path);
    }
}
