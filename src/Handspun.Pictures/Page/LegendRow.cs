using Handspun.Pictures.Lettering;
using ScottPlot;
using SkiaSharp;

namespace Handspun.Pictures.Page;

/// <summary>One kind of thing in a plot: its line or its marker, and its name.</summary>
internal sealed record LegendEntry(string Name, LineStyle? Line = null, MarkerStyle? Marker = null, SKColor? Band = null);

/// <summary>Names what a panel shows, in one line above it.</summary>
internal static class LegendRow
{
    private const float Sample = 24;
    private const float Gap = 16;
    private static readonly TextStyle Style = new(13, Ink.Text);

    /// <summary>Draws the entries so that they end at the right; the last ones go where there is no room.</summary>
    /// <param name="canvas">Where to draw.</param>
    /// <param name="entries">From left to right.</param>
    /// <param name="right">Where the row ends.</param>
    /// <param name="baseline">Where the letters stand.</param>
    public static void Draw(SKCanvas canvas, IReadOnlyList<LegendEntry> entries, float right, float baseline)
    {
        var left = right - entries.Sum(Width) + Gap;
        using var paint = Paint.NewDisposablePaint();
        foreach (var entry in entries)
        {
            var middle = baseline - 4.5f;
            var width = SampleWidth(entry);
            if (entry.Band is { } band)
            {
                using var fill = new SKPaint { Color = band };
                canvas.DrawRect(left, middle - 6, width, 12, fill);
                entry.Line?.Render(canvas, new PixelLine(left, middle - 6, left + width, middle - 6), paint);
            }
            else
            {
                entry.Line?.Render(canvas, new PixelLine(left, middle, left + width, middle), paint);
            }

            entry.Marker?.Render(canvas, new Pixel(left + width / 2, middle), paint);
            Letters.Draw(canvas, entry.Name, new(left + width + 5, baseline), Style);
            left += Width(entry);
        }
    }

    private static float SampleWidth(LegendEntry entry) => entry.Line is null ? 10 : Sample;

    private static float Width(LegendEntry entry) => SampleWidth(entry) + 5 + Letters.Width(entry.Name, Style) + Gap;
}
