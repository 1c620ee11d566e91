using System.Collections.Concurrent;
using Handspun.Pictures.Lettering;
using SkiaSharp;

namespace Handspun.Pictures.Report;

/// <summary>The fonts of a report: those that the program brings along, and for letters that these lack, whatever the machine has.</summary>
internal static class ReportFonts
{
    private const string Anywhere = "?";
    private static readonly ConcurrentDictionary<(int Letter, bool Strong), SKTypeface?> Borrowed = new();
    private static readonly Lazy<IReadOnlyList<SKTypeface>> OnTheMachine = new(() =>
        [.. SKFontManager.Default.FontFamilies.Select(family => SKFontManager.Default.MatchFamily(family)).OfType<SKTypeface>()]);

    /// <summary>The font that has a letter; null where none has.</summary>
    public static SKTypeface? For(int letter, bool strong)
    {
        var own = strong ? Typefaces.Strong : Typefaces.Regular;
        return own.ContainsGlyph(letter) ? own : Borrowed.GetOrAdd((letter, strong), Borrow);
    }

    /// <summary>The text cut where the font changes; a letter that no font has becomes a question mark.</summary>
    public static IEnumerable<(string Text, SKTypeface Typeface)> Runs(string text, bool strong)
    {
        var own = strong ? Typefaces.Strong : Typefaces.Regular;
        var (run, typeface) = ("", own);
        foreach (var rune in text.EnumerateRunes())
        {
            var found = For(rune.Value, strong);
            var next = found ?? own;
            if (next != typeface && run.Length > 0)
            {
                yield return (run, typeface);
                run = "";
            }

            (run, typeface) = (run + (found is null ? Anywhere : rune.ToString()), next);
        }

        if (run.Length > 0)
        {
            yield return (run, typeface);
        }
    }

    private static SKTypeface? Borrow((int Letter, bool Strong) wanted)
    {
        var style = wanted.Strong ? SKFontStyle.Bold : SKFontStyle.Normal;
        return SKFontManager.Default.MatchCharacter(null, style, null, wanted.Letter)
            ?? OnTheMachine.Value.FirstOrDefault(typeface => typeface.ContainsGlyph(wanted.Letter));
    }
}
