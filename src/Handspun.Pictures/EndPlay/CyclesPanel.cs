using Handspun.Jobs.Lengths;
using Handspun.Pictures.Lettering;
using Handspun.Pictures.Page;
using Handspun.Pictures.Runout;
using Handspun.Pictures.Scales;
using ScottPlot;
using SkiaSharp;

namespace Handspun.Pictures.EndPlay;

/// <summary>The end play of every cycle by itself, the end play of all with its uncertainty, and the limit as a band.</summary>
internal static class CyclesPanel
{
    private static readonly MarkerStyle Cycle = new(MarkerShape.FilledDiamond, 10, Ink.Plot(Ink.Text)) { LineWidth = 0, OutlineStyle = LineStyle.None };

    /// <summary>Draws the panel; its dimension takes <see cref="Dimension.Room"/> to the right of the area.</summary>
    public static void Draw(SKCanvas canvas, SKSize page, SKRect area, EndPlayPictureContent content)
    {
        var (value, doubt) = (Shown(content, content.Result.EndPlay!.Value.Millimetres), Shown(content, content.Result.EndPlayU95?.Millimetres ?? 0));
        var cycles = content.Result.ByCycleMillimetres.Select((play, i) => new Coordinates(i + 1, Shown(content, play))).ToArray();
        var movement = cycles.Select(cycle => cycle.Y).Append(value + doubt).Max();
        var limit = LimitBand.Of(content.Limit, movement, content.Unit);
        var high = 1.2 * (limit is { OffScale: false } ? Math.Max(movement, Math.Max(limit.Lower ?? 0, limit.Upper ?? 0)) : movement);
        var last = Math.Max(1, cycles.Length) + 0.5;
        using var panel = new Panel(
            page,
            area,
            new CoordinateRect(0.5, last, 0, high),
            new AxisTicks(1, [.. cycles.Select(cycle => (cycle.X, Digits.Of(cycle.X, 0)))]),
            AxisTicks.ForLength(0, high, wanted: Math.Max(3, (int)(area.Height / 26)), content.Unit));
        List<LegendEntry> legend = [new("one cycle", Marker: Cycle), new("end play", Strokes.Profile), new("\u00b1 its uncertainty", Band: Ink.Ring)];
        if (limit is not null)
        {
            AddLimit(panel.Plot, limit, last, high);
            legend.Add(new("allowed", Band: Ink.Allowed));
        }

        var about = panel.Plot.Add.Rectangle(0.5, last, Math.Max(0, value - doubt), value + doubt);
        about.FillColor = Ink.Plot(Ink.Ring);
        about.LineWidth = 0;
        panel.Plot.Add.Line(0.5, value, last, value).LineStyle = Strokes.Profile;
        panel.Plot.Add.Markers(cycles).MarkerStyle = Cycle;
        panel.Draw(canvas, "Cycle", $"End play ({LengthText.Symbol(content.Unit)})");
        if (content.Limit is { } told)
        {
            NameLimit(canvas, panel, area, limit!, $"limit {Wording.Limit(told, content.Unit)}", value);
        }

        new Dimension("End play", content.Result.EndPlay.Value, content.Result.EndPlayU95, content.Unit).Draw(canvas, area.Right, panel);
        Letters.Draw(canvas, "Every cycle by itself", new(area.Left, area.Top - 10), new(15, Ink.Text, Strong: true));
        LegendRow.Draw(canvas, legend, area.Right + Dimension.Room, area.Top - 10);
    }

    private static double Shown(EndPlayPictureContent content, double millimetres) => LengthText.InUnit(millimetres, content.Unit);

    private static void AddLimit(Plot plot, LimitBand limit, double last, double high)
    {
        var (bottom, top) = (limit.Lower ?? 0, limit is { Upper: { } upper, OffScale: false } ? upper : high);
        if (bottom < high)
        {
            var band = plot.Add.Rectangle(0.5, last, bottom, Math.Min(top, high));
            band.FillColor = Ink.Plot(Ink.Allowed);
            band.LineWidth = 0;
        }

        foreach (var edge in (ReadOnlySpan<double?>)[limit.Lower, limit.OffScale ? null : limit.Upper])
        {
            if (edge is { } height && height < high)
            {
                plot.Add.Plottable(new DashedLine([new(0.5, height), new(last, height)], Strokes.Limit));
            }
        }
    }

    private static void NameLimit(SKCanvas canvas, Panel panel, SKRect area, LimitBand limit, string text, double value)
    {
        var edge = limit.Upper ?? limit.Lower!.Value;
        var clash = panel.At(0, edge).Y - panel.At(0, value).Y is > 0 and < 22;   // its name would stand on the end play's own line
        var baseline = limit.OffScale ? area.Top + 16 : panel.At(0, edge).Y + (clash ? 16 : -6);
        Letters.Draw(canvas, limit.OffScale ? $"{text}, above this scale" : text, new(area.Left + 10, baseline), new(13, Ink.Limit, Strong: true), halo: true);
    }
}
