using Handspun.Jobs.Lengths;
using Handspun.Metrology.Quantities;
using Handspun.Pictures.Lettering;
using SkiaSharp;

namespace Handspun.Pictures.Page;

/// <summary>A measured length drawn as a dimension beside the plot, from zero up, its uncertainty as a bar at its upper end.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Value">The length.</param>
/// <param name="U95">Its expanded uncertainty; null where it is not known.</param>
/// <param name="Unit">The unit shown, which is also the panel's.</param>
internal sealed record Dimension(string Name, Length Value, Length? U95, LengthUnit Unit)
{
    /// <summary>How much it takes to the right of the plot.</summary>
    public const float Room = 92;

    /// <summary>Draws it.</summary>
    /// <param name="canvas">Where to draw.</param>
    /// <param name="left">The right edge of the plot.</param>
    /// <param name="panel">The plot.</param>
    public void Draw(SKCanvas canvas, float left, Panel panel)
    {
        var (value, doubt) = (LengthText.InUnit(Value.Millimetres, Unit), LengthText.InUnit(U95?.Millimetres ?? 0, Unit));
        var (low, high) = (panel.At(0, 0).Y, panel.At(0, value).Y);
        using var line = new SKPaint { Color = Ink.Text, IsStroke = true, StrokeWidth = 1.3f, IsAntialias = true };
        var x = left + 12;
        canvas.DrawLine(left, low, x + 5, low, line);
        canvas.DrawLine(left, high, x + 5, high, line);
        canvas.DrawLine(x, low, x, high, line);
        Arrow(canvas, x, low, pointsDown: true, length: Math.Min(8, (low - high) / 2));
        Arrow(canvas, x, high, pointsDown: false, length: Math.Min(8, (low - high) / 2));
        DrawUncertainty(canvas, x + 5, panel.At(0, value + doubt).Y, panel.At(0, Math.Max(0, value - doubt)).Y);

        var middle = (low + high) / 2;
        var words = left + 26;
        Letters.Draw(canvas, Name, new(words, middle - 10), new(14, Ink.QuietText));
        Letters.Draw(canvas, LengthText.Of(Value, Unit), new(words, middle + 7), new(15, Ink.Text, Strong: true));
        if (U95 is { } u95)
        {
            Letters.Draw(canvas, $"± {LengthText.Uncertainty(u95, Unit)}", new(words, middle + 24), new(13, Ink.Text));
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
