using Handspun.Jobs.Lengths;
using Handspun.Pictures.Lettering;
using Handspun.Pictures.Page;
using SkiaSharp;

namespace Handspun.Pictures.Runout;

/// <summary>The runout drawn as a dimension beside the plot, its uncertainty as a bar at its upper end.</summary>
internal static class RunoutDimension
{
    /// <summary>How much it takes to the right of the plot.</summary>
    public const float Room = 92;

    public static void Draw(SKCanvas canvas, float left, float low, float high, HeightScale scale, RunoutPictureContent content, Panel panel)
    {
        using var line = new SKPaint { Color = Ink.Text, IsStroke = true, StrokeWidth = 1.3f, IsAntialias = true };
        var x = left + 12;
        canvas.DrawLine(left, low, x + 5, low, line);
        canvas.DrawLine(left, high, x + 5, high, line);
        canvas.DrawLine(x, low, x, high, line);
        Arrow(canvas, x, low, pointsDown: true, length: Math.Min(8, (low - high) / 2));
        Arrow(canvas, x, high, pointsDown: false, length: Math.Min(8, (low - high) / 2));
        DrawUncertainty(canvas, x + 5, panel.At(0, scale.Runout + scale.Uncertainty).Y, panel.At(0, Math.Max(0, scale.Runout - scale.Uncertainty)).Y);

        var middle = (low + high) / 2;
        var words = left + 26;
        Letters.Draw(canvas, "TIR", new(words, middle - 10), new(14, Ink.QuietText));
        Letters.Draw(canvas, LengthText.Of(content.Result.Tir!.Value, content.Unit), new(words, middle + 7), new(15, Ink.Text, Strong: true));
        if (content.Result.TirU95 is { } u95)
        {
            Letters.Draw(canvas, $"± {LengthText.Uncertainty(u95, content.Unit)}", new(words, middle + 24), new(13, Ink.Text));
        }
    }

    private static void Arrow(SKCanvas canvas, float x, float tip, bool pointsDown, float length)
    {
        var back = pointsDown ? tip - length : tip + length;
        using var head = new SKPath();
        head.MoveTo(x, tip);
        head.LineTo(x - length * 0.4f, back);
        head.LineTo(x + length * 0.4f, back);
        head.Close();
        using var fill = new SKPaint { Color = Ink.Text, IsAntialias = true };
        canvas.DrawPath(head, fill);
    }

    private static void DrawUncertainty(SKCanvas canvas, float x, float top, float bottom)
    {
        if (bottom - top < 3)
        {
            return;   // shorter than the line is thick
        }

        using var line = new SKPaint { Color = Ink.Text, IsStroke = true, StrokeWidth = 1.3f, IsAntialias = true };
        canvas.DrawLine(x, top, x, bottom, line);
        canvas.DrawLine(x - 3, top, x + 3, top, line);
        canvas.DrawLine(x - 3, bottom, x + 3, bottom, line);
    }
}
