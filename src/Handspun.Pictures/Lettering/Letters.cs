using Handspun.Pictures.Page;
using SkiaSharp;

namespace Handspun.Pictures.Lettering;

/// <summary>Draws text with the fonts that the program brings along.</summary>
internal static class Letters
{
    /// <summary>The width of a text on one line.</summary>
    public static float Width(string text, TextStyle style)
    {
        using var font = style.Font();
        return font.MeasureText(text);
    }

    /// <summary>Draws one line of text with its baseline at the point.</summary>
    /// <param name="canvas">Where to draw.</param>
    /// <param name="text">What to draw.</param>
    /// <param name="at">The point, on the baseline.</param>
    /// <param name="style">How it looks.</param>
    /// <param name="anchor">Which side of the text lies at the point.</param>
    /// <param name="halo">Whether to clear the ground around the letters, for text over lines.</param>
    public static void Draw(SKCanvas canvas, string text, SKPoint at, TextStyle style, TextAnchor anchor = TextAnchor.Left, bool halo = false)
    {
        using var font = style.Font();
        var width = font.MeasureText(text);
        var left = anchor switch { TextAnchor.Left => at.X, TextAnchor.Centre => at.X - width / 2, _ => at.X - width };
        if (halo)
        {
            using var rim = new SKPaint
            {
                Color = Ink.Paper,
                IsStroke = true,
                StrokeWidth = 4,
                StrokeJoin = SKStrokeJoin.Round,
                IsAntialias = true,
            };
            canvas.DrawText(text, left, at.Y, font, rim);
            using var behind = new SKPaint { Color = Ink.Paper };
            canvas.DrawRect(left, at.Y - style.Size * 0.72f, width, style.Size * 0.72f, behind);   // a line above a decimal point would make it a colon
        }

        using var paint = new SKPaint { Color = style.Colour, IsAntialias = true };
        canvas.DrawText(text, left, at.Y, font, paint);
    }

    /// <summary>Draws one line of text that reads upwards, its middle at the point.</summary>
    public static void DrawUpwards(SKCanvas canvas, string text, SKPoint middle, TextStyle style)
    {
        canvas.Save();
        canvas.Translate(middle.X, middle.Y);
        canvas.RotateDegrees(-90);
        Draw(canvas, text, default, style, TextAnchor.Centre);
        canvas.Restore();
    }
}
