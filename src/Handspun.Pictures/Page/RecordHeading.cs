using Handspun.Jobs.Lengths;
using Handspun.Metrology.Decision;
using Handspun.Metrology.Quantities;
using Handspun.Pictures.Lettering;
using SkiaSharp;

namespace Handspun.Pictures.Page;

/// <summary>What stands at the top of a record's picture.</summary>
/// <param name="Title">What was measured on which machine.</param>
/// <param name="Subtitle">Job, date, gauge.</param>
/// <param name="Value">What came out, its name and unit included; null where nothing did.</param>
/// <param name="U95">Its expanded uncertainty; null where it is not known.</param>
/// <param name="Decision">What it says against the limit, in words.</param>
/// <param name="Verdict">The same as a verdict; null where there is none.</param>
/// <param name="Unit">The unit of lengths.</param>
internal sealed record HeadingWords(string Title, string Subtitle, string? Value, Length? U95, string Decision, Verdict? Verdict, LengthUnit Unit);

/// <summary>The top of the picture: what was measured on the left, what came out on the right.</summary>
internal static class RecordHeading
{
    private static readonly TextStyle Title = new(23, Ink.Text, Strong: true);
    private static readonly TextStyle Subtitle = new(15, Ink.QuietText);
    private static readonly TextStyle Doubt = new(17, Ink.Text);

    public static void Draw(SKCanvas canvas, HeadingWords words, float left, float right, float top)
    {
        var taken = words.Value is { } value ? DrawResult(canvas, words, value, right, top) : 0;
        var room = right - left - taken - 24;
        Letters.Draw(canvas, TextFit.OneLine(words.Title, room, Title), new(left, top + 22), Title);
        Letters.Draw(canvas, TextFit.OneLine(words.Subtitle, room, Subtitle), new(left, top + 46), Subtitle);
    }

    // Gives the width it took.
    private static float DrawResult(SKCanvas canvas, HeadingWords words, string value, float right, float top)
    {
        var doubt = words.U95 is { } u95 ? $"\u00b1 {LengthText.Uncertainty(u95, words.Unit)}" : "";
        var gap = doubt.Length > 0 ? 8 : 0;
        var doubtWidth = Letters.Width(doubt, Doubt);
        Letters.Draw(canvas, doubt, new(right, top + 22), Doubt, TextAnchor.Right);
        Letters.Draw(canvas, value, new(right - doubtWidth - gap, top + 22), Title, TextAnchor.Right);

        var style = new TextStyle(15, VerdictSign.Colour(words.Verdict), Strong: true);
        var decisionWidth = Letters.Width(words.Decision, style);
        Letters.Draw(canvas, words.Decision, new(right, top + 46), style, TextAnchor.Right);
        if (words.Verdict is { } verdict)
        {
            VerdictSign.Draw(canvas, new(right - decisionWidth - 15, top + 41), 9, verdict);
        }

        return Math.Max(doubtWidth + gap + Letters.Width(value, Title), decisionWidth + 26);
    }
}
