using Handspun.Jobs.Lengths;
using Handspun.Pictures.Lettering;
using Handspun.Pictures.Page;
using Handspun.Pictures.Runout;
using Handspun.Pictures.Scales;
using ScottPlot;
using SkiaSharp;

namespace Handspun.Pictures.Readings;

/// <summary>What was found each time by itself, the result of all with its uncertainty, and the limit as a band.</summary>
internal static class RepeatsPanel
{
    private const double FirstEdge = 0.5;
    private static readonly MarkerStyle Single = new(MarkerShape.FilledDiamond, 10, Ink.Plot(Ink.Text)) { LineWidth = 0, OutlineStyle = LineStyle.None };

    /// <summary>Draws the panel; what the result is stands in the <see cref="Dimension.Room"/> to the right of the area.</summary>
    public static void Draw(SKCanvas canvas, SKSize page, SKRect area, RepeatsContent content)
    {
        var each = content.Each.Select((found, i) => new Coordinates(i + 1, content.Shown(found))).ToArray();
        var (low, high) = content.Scale();
        var last = Math.Max(1, each.Length) + FirstEdge;
        using var panel = new Panel(
            page,
            area,
            new CoordinateRect(FirstEdge, last, low, high),
            new AxisTicks(1, [.. each.Select(one => (one.X, Digits.Of(one.X, 0)))]),
            AxisTicks.ForLength(low, high, wanted: Math.Max(3, (int)(area.Height / 26)), content.Unit));
        List<LegendEntry> legend = [new($"one {content.One}", Marker: Single), new("all of them", Strokes.Profile), new("\u00b1 its uncertainty", Band: Ink.Ring)];
        if (content.Limit is not null)
        {
            AddLimit(panel.Plot, content, last, low, high);
            legend.Add(new("allowed", Band: Ink.Allowed));
        }

        var about = panel.Plot.Add.Rectangle(FirstEdge, last, Math.Max(low, content.ShownValue - content.ShownDoubt), content.ShownValue + content.ShownDoubt);
        about.FillColor = Ink.Plot(Ink.Ring);
        about.LineWidth = 0;
        panel.Plot.Add.Line(FirstEdge, content.ShownValue, last, content.ShownValue).LineStyle = Strokes.Profile;
        panel.Plot.Add.Markers(each).MarkerStyle = Single;
        panel.Draw(canvas, char.ToUpperInvariant(content.One[0]) + content.One[1..], $"{content.Name} ({LengthText.Symbol(content.Unit)})");
        NameLimit(canvas, panel, area, content);
        if (content.FromZero)
        {
            new Dimension(content.Name, content.Value, content.U95, content.Unit).Draw(canvas, area.Right, panel);
        }
        else
        {
            NameValue(canvas, area.Right + 10, panel.At(0, content.ShownValue).Y, content);
        }

        Letters.Draw(canvas, content.Title, new(area.Left, area.Top - 10), new(15, Ink.Text, Strong: true));
        LegendRow.Draw(canvas, legend, area.Right + Dimension.Room, area.Top - 10);
    }

    private static void AddLimit(Plot plot, RepeatsContent content, double last, double low, double high)
    {
        // An edge that the scale leaves out lies beyond it; the band then runs to the end, or is not there at all.
        var limit = content.Limit!;
        var bottom = content.Lower ?? (limit.Lower is { } least && content.Shown(least.Millimetres) > high ? high : low);
        var top = content.Upper ?? (limit.Upper is { } most && content.Shown(most.Millimetres) < low ? low : high);
        if (bottom < top)
        {
            var band = plot.Add.Rectangle(FirstEdge, last, bottom, top);
            band.FillColor = Ink.Plot(Ink.Allowed);
            band.LineWidth = 0;
        }

        foreach (var edge in (ReadOnlySpan<double?>)[content.Lower, content.Upper])
        {
            if (edge is { } height)
            {
                plot.Add.Plottable(new DashedLine([new(FirstEdge, height), new(last, height)], Strokes.Limit));
            }
        }
    }

    private static void NameLimit(SKCanvas canvas, Panel panel, SKRect area, RepeatsContent content)
    {
        if (content.Limit is not { } limit)
        {
            return;
        }

        var name = $"limit {Wording.Limit(limit, content.Unit)}";
        var style = new TextStyle(13, Ink.Limit, Strong: true);
        if ((content.Upper ?? content.Lower) is not { } edge)
        {
            Letters.Draw(canvas, $"{name}, off this scale", new(area.Left + 10, area.Top + 16), style, halo: true);
            return;
        }

        var clash = panel.At(0, edge).Y - panel.At(0, content.ShownValue).Y is > 0 and < 22;   // its name would stand on the result's own line
        Letters.Draw(canvas, name, new(area.Left + 10, panel.At(0, edge).Y + (clash ? 16 : -6)), style, halo: true);
    }

    private static void NameValue(SKCanvas canvas, float left, float middle, RepeatsContent content)
    {
        Letters.Draw(canvas, content.Name, new(left, middle - 12), new(14, Ink.QuietText));
        Letters.Draw(canvas, LengthText.Of(content.Value, content.Unit), new(left, middle + 5), new(15, Ink.Text, Strong: true));
        if (content.U95 is { } u95)
        {
            Letters.Draw(canvas, $"\u00b1 {LengthText.Uncertainty(u95, content.Unit)}", new(left, middle + 22), new(13, Ink.Text));
        }
    }
}
