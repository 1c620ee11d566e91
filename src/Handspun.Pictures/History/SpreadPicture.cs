using Handspun.Jobs.History;
using Handspun.Jobs.Lengths;
using Handspun.Pictures.Lettering;
using Handspun.Pictures.Page;
using Handspun.Pictures.Runout;
using Handspun.Pictures.Scales;
using ScottPlot;
using SkiaSharp;

namespace Handspun.Pictures.History;

/// <summary>The still picture of how a point came out on the shop's other bikes of a kind, and where this bike lies among them.</summary>
public static class SpreadPicture
{
    private const int Height = 300;
    private const int MostBars = 20;
    private const float Margin = RecordPage.Margin;

    /// <summary>Lays the picture out; it is drawn when it is written.</summary>
    /// <param name="spread">What the others showed.</param>
    /// <param name="title">The point and the kind of bike.</param>
    /// <param name="unit">The unit shown.</param>
    /// <exception cref="MissingFontException">The fonts that the program brings along are not there.</exception>
    public static Picture Draw(KindSpread spread, string title, LengthUnit unit)
    {
        ArgumentNullException.ThrowIfNull(spread);
        Typefaces.Check();
        return new(new(RecordPage.Width, Height), title, SpreadSentence.Of(spread, unit), (canvas, page) =>
        {
            var style = new TextStyle(18, Ink.Text, Strong: true);
            Letters.Draw(canvas, TextFit.OneLine(title, page.Width - 2 * Margin, style), new(Margin, Margin + 16), style);
            DrawPanel(canvas, page, new(Margin + 60, 90, page.Width - Margin - 12, page.Height - 58), spread, unit);
        });
    }

    private static void DrawPanel(SKCanvas canvas, SKSize page, SKRect area, KindSpread spread, LengthUnit unit)
    {
        double[] others = [.. spread.RisingMillimetres.Select(value => LengthText.InUnit(value, unit))];
        var own = LengthText.InUnit(spread.Result.Millimetres, unit);
        var across = AxisTicks.ForLength(Math.Min(own, others[0]), Math.Max(own, others[^1]), (int)Math.Clamp(2 * Math.Sqrt(others.Length), 6, MostBars), unit);
        var step = across.Step;
        var firstBar = (int)Math.Floor(Math.Min(own, others[0]) / step);
        var lastBar = (int)Math.Floor(Math.Max(own, others[^1]) / step);
        var counts = Enumerable.Range(firstBar, lastBar - firstBar + 1).Select(bar => others.Count(value => (int)Math.Floor(value / step) == bar)).ToArray();
        var (low, high, most) = ((firstBar - 0.5) * step, (lastBar + 1.5) * step, counts.Max() * 1.15);
        using var panel = new Panel(page, area, new CoordinateRect(low, high, 0, most), AxisTicks.ForLength(low, high, 9, unit), AxisTicks.Round(0, most, 4, smallestStep: 1));
        var middle = panel.Plot.Add.Rectangle(LengthText.InUnit(spread.LowerQuartile.Millimetres, unit), LengthText.InUnit(spread.UpperQuartile.Millimetres, unit), 0, most);
        middle.FillColor = Ink.Plot(Ink.Allowed);
        middle.LineWidth = 0;
        for (var bar = 0; bar < counts.Length; bar++)
        {
            var left = (firstBar + bar) * step;
            var drawn = panel.Plot.Add.Rectangle(left + 0.06 * step, left + 0.94 * step, 0, counts[bar]);
            drawn.FillColor = Ink.Plot(Ink.Ring);
            drawn.LineStyle = new(1, Ink.Plot(Ink.QuietText));
        }

        var median = LengthText.InUnit(spread.Median.Millimetres, unit);
        panel.Plot.Add.Plottable(new DashedLine([new(median, 0), new(median, most)], Strokes.TurnEdge with { Colour = Ink.Text, Width = 1.6f }));
        panel.Plot.Add.Line(own, 0, own, most).LineStyle = Strokes.Profile;
        panel.Draw(canvas, $"Result ({LengthText.Symbol(unit)})", "Bikes");
        var name = new TextStyle(14, Ink.Text, Strong: true);
        var left2 = panel.At(own, 0).X > area.MidX;
        Letters.Draw(canvas, "this bike", new(panel.At(own, 0).X + (left2 ? -7 : 7), area.Top + 16), name, left2 ? TextAnchor.Right : TextAnchor.Left, halo: true);
        LegendRow.Draw(
            canvas,
            [new("this bike", Strokes.Profile), new("other bikes", Band: Ink.Ring), new("middle half of them", Band: Ink.Allowed), new("dotted: their median")],
            area.Right,
            area.Top - 10);
    }
}
