using Handspun.Pictures.Lettering;
using SkiaSharp;

namespace Handspun.Pictures.Report;

/// <summary>A text in a frame, for what must not be overlooked on a page without colours.</summary>
internal static class Framed
{
    private const float Inside = 8;

    public static void Put(Sheets sheets, string text, TextStyle style, SKColor colour)
    {
        var passage = Passage.Of(text, sheets.Width - 2 * Inside, style);
        var height = passage.Height + 2 * (Inside - 2);
        sheets.Put(height + 4, (canvas, top) =>
        {
            using var frame = new SKPaint { Color = colour, IsStroke = true, StrokeWidth = 1.2f, IsAntialias = true };
            canvas.DrawRect(sheets.Left, top, sheets.Width, height, frame);
            passage.Draw(canvas, sheets.Left + Inside, top + Inside - 2);
        });
    }
}
