using Handspun.Jobs.Lengths;
using Handspun.Metrology.Runout;
using Handspun.Pictures.Lettering;
using Handspun.Pictures.Page;
using SkiaSharp;

namespace Handspun.Pictures.Runout;

/// <summary>The top of the picture: what was measured on the left, what came out on the right.</summary>
internal static class RecordHeading
{
    private static readonly TextStyle Title = new(23, Ink.Text, Strong: true);
    private static readonly TextStyle Subtitle = new(15, Ink.QuietText);
    private static readonly TextStyle Doubt = new(17, Ink.Text);

    public static void Draw(SKCanvas canvas, RunoutPictureContent content, float left, float right, float top)
    {
        var taken = content.Result.Status == RunoutStatus.Measured ? DrawResult(canvas, content, right, top) : 0;
        var room = right - left - taken - 24;
        Letters.Draw(canvas, TextFit.OneLine(content.Title, room, Title), new(left, top + 22), Title);
        Letters.Draw(canvas, TextFit.OneLine(content.Subtitle, room, Subtitle), new(left, top + 46), Subtitle);
    }

    // Gives the width it took.
    private static float DrawResult(SKCanvas canvas, RunoutPictureContent content, float right, float top)
    {
        var value = $"TIR {LengthText.Of(content.Result.Tir!.Value, content.Unit)}";
        var doubt = content.Result.TirU95 is { } u95 ? $"± {LengthText.Uncertainty(u95, content.Unit)}" : "";
        var gap = doubt.Length > 0 ? 8 : 0;
        var doubtWidth = Letters.Width(doubt, Doubt);
        Letters.Draw(canvas, doubt, new(right, top + 22), Doubt, TextAnchor.Right);
        Letters.Draw(canvas, value, new(right - doubtWidth - gap, top + 22), Title, TextAnchor.Right);

        var decision = Wording.Decision(content.Verdict, content.Limit, content.Unit);
        var style = new TextStyle(15, VerdictSign.Colour(content.Verdict), Strong: true);
        var decisionWidth = Letters.Width(decision, style);
        Letters.Draw(canvas, decision, new(right, top + 46), style, TextAnchor.Right);
        if (content.Verdict is { } verdict)
        {
            VerdictSign.Draw(canvas, new(right - decisionWidth - 15, top + 41), 9, verdict);
        }

        return Math.Max(doubtWidth + gap + Letters.Width(value, Title), decisionWidth + 26);
    }
}
