using System.Text;

namespace Handspun.Pictures.Lettering;

/// <summary>Makes text fit a width.</summary>
internal static class TextFit
{
    /// <summary>The text on one line, its end left out with an ellipsis where it is too long.</summary>
    public static string OneLine(string text, float width, TextStyle style)
    {
        var line = Drawable(text);
        if (Letters.Width(line, style) <= width)
        {
            return line;
        }

        var kept = line.Length;
        do
        {
            kept -= kept > 1 && char.IsLowSurrogate(line[kept - 1]) ? 2 : 1;
        }
        while (kept > 0 && Letters.Width(line[..kept].TrimEnd() + "…", style) > width);

        return line[..Math.Max(0, kept)].TrimEnd() + "…";
    }

    /// <summary>The text broken between words into lines that fit; a word that is too long keeps its line to itself, shortened.</summary>
    public static IReadOnlyList<string> Lines(string text, float width, TextStyle style)
    {
        var lines = new List<string>();
        var line = "";
        foreach (var word in Drawable(text).Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length > 0 && Letters.Width(longer, style) > width)
            {
                lines.Add(OneLine(line, width, style));
                line = word;
            }
            else
            {
                line = longer;
            }
        }

        if (line.Length > 0)
        {
            lines.Add(OneLine(line, width, style));
        }

        return lines;
    }

    /// <summary>The plain text with a question mark for each character that the fonts have no letter for.</summary>
    public static string Drawable(string text)
    {
        var drawable = new StringBuilder(text.Length);
        foreach (var rune in Plain(text).EnumerateRunes())
        {
            drawable.Append(Typefaces.Strong.ContainsGlyph(rune.Value) && Typefaces.Regular.ContainsGlyph(rune.Value) ? rune.ToString() : "?");
        }

        return drawable.ToString();
    }

    /// <summary>The text without line breaks, control characters and broken halves of characters, none of which can be drawn or put into XML.</summary>
    public static string Plain(string text)
    {
        var plain = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())   // a broken half comes out as U+FFFD
        {
            plain.Append(Rune.IsControl(rune) || rune.Value is 0xFFFE or 0xFFFF ? " " : rune.ToString());
        }

        return plain.ToString().Trim();
    }
}
