using System.Text;
using Handspun.Pictures.Lettering;
using Handspun.Pictures.Page;
using SkiaSharp;

namespace Handspun.Pictures.Report;

/// <summary>Knows letters by their outlines: a stored picture keeps each as a path, and a document takes it as text, which is a tenth as large and can be searched.</summary>
internal static class LetterShapes
{
    private static readonly Lazy<Dictionary<string, (SKTypeface, ushort)>> Known = new(Learn);

    /// <summary>The glyph with that outline; null where it is none of the usual letters.</summary>
    public static (SKTypeface Typeface, ushort Glyph)? Find(string path) => Known.Value.TryGetValue(path, out var found) ? found : null;

    private static Dictionary<string, (SKTypeface, ushort)> Learn()
    {
        var known = new Dictionary<string, (SKTypeface, ushort)>();
        var usual = Enumerable.Range(0x21, 0x7E - 0x20).Concat(Enumerable.Range(0xA1, 0x17F - 0xA0)).Concat("–—‘’“”…−≤≥′″".Select(letter => (int)letter));
        foreach (var letter in usual)
        {
            foreach (var strong in (ReadOnlySpan<bool>)[false, true])
            {
                var typeface = strong ? Typefaces.Strong : Typefaces.Regular;
                if (typeface.ContainsGlyph(letter) && OutlinedText.OutlineOf(new Rune(letter), strong) is { Length: > 0 } outline)
                {
                    known.TryAdd(outline, (typeface, typeface.GetGlyph(letter)));
                }
            }
        }

        return known;
    }
}
