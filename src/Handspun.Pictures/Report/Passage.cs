using Handspun.Pictures.Lettering;
using SkiaSharp;

namespace Handspun.Pictures.Report;

/// <summary>A text broken into lines for a width.</summary>
internal sealed class Passage
{
    private const float Leading = 1.38f;
    private const float Ascent = 1.0f;
    private readonly TextStyle _style;

    private Passage(IReadOnlyList<string> lines, TextStyle style) => (Lines, _style) = (lines, style);

    /// <summary>Its lines.</summary>
    public IReadOnlyList<string> Lines { get; }

    /// <summary>How high it is.</summary>
    public float Height => Lines.Count * LineHeight;

    /// <summary>From one line to the next.</summary>
    public float LineHeight => _style.Size * Leading;

    /// <summary>The width of its widest line.</summary>
    public float Width => Lines.Count == 0 ? 0 : Lines.Max(line => WidthOf(line, _style));

    /// <summary>Breaks a text between words, and within a word that is too long for a line.</summary>
    public static Passage Of(string text, float width, TextStyle style)
    {
        var lines = new List<string>();
        var line = "";
        foreach (var word in TextFit.Plain(text).Split(' ', StringSplitOptions.RemoveEmptyEntries).SelectMany(word => Cut(word, width, style)))
        {
            var longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length > 0 && WidthOf(longer, style) > width)
            {
                lines.Add(line);
                line = word;
            }
            else
            {
                line = longer;
            }
        }

        if (line.Length > 0)
        {
            lines.Add(line);
        }

        return new(lines, style);
    }

    /// <summary>Lines from one on, and how many.</summary>
    public Passage Part(int from, int count) => new([.. Lines.Skip(from).Take(count)], _style);

    /// <summary>Draws it with its top left corner at a point.</summary>
    public void Draw(SKCanvas canvas, float left, float top)
    {
        for (var i = 0; i < Lines.Count; i++)
        {
            DrawLine(canvas, Lines[i], left, top + i * LineHeight + Ascent * _style.Size, _style);
        }
    }

    /// <summary>Draws one line with its baseline at a point.</summary>
    public static void DrawLine(SKCanvas canvas, string text, float left, float baseline, TextStyle style)
    {
        using var paint = new SKPaint { Color = style.Colour, IsAntialias = true };
        foreach (var (run, typeface) in ReportFonts.Runs(text, style.Strong))
        {
            using var font = FontOf(typeface, style);
            canvas.DrawText(run, left, baseline, font, paint);
            left += font.MeasureText(run);
        }
    }

    /// <summary>The width of a text on one line.</summary>
    public static float WidthOf(string text, TextStyle style)
    {
        var width = 0f;
        foreach (var (run, typeface) in ReportFonts.Runs(text, style.Strong))
        {
            using var font = FontOf(typeface, style);
            width += font.MeasureText(run);
        }

        return width;
    }

    private static SKFont FontOf(SKTypeface typeface, TextStyle style) => new(typeface, style.Size) { Subpixel = true, Hinting = SKFontHinting.None, LinearMetrics = true };

    // A number without blanks, a long address: cut where it must be, never lost.
    private static IEnumerable<string> Cut(string word, float width, TextStyle style)
    {
        while (word.Length > 1 && WidthOf(word, style) > width)
        {
            var kept = word.Length - 1;
            while (kept > 1 && (char.IsLowSurrogate(word[kept]) || WidthOf(word[..kept], style) > width))
            {
                kept--;
            }

            yield return word[..kept];
            word = word[kept..];
        }

        yield return word;
    }
}
