using Handspun.Pictures.Lettering;
using Handspun.Pictures.Page;
using Handspun.Pictures.Readings;
using ScottPlot;
using SkiaSharp;

namespace Handspun.Pictures.EndPlay;

/// <summary>The readings over time: where the shaft was held, and both stops with the drift of the stand.</summary>
internal static class HoldsPanel
{
    private static readonly LineStyle Held = new(4, Ink.Plot(Ink.Profile));
    private static readonly Dash Aside = new(Ink.LeftOut, 3, 3, 3);

    /// <summary>Draws the panel.</summary>
    public static void Draw(SKCanvas canvas, SKSize page, SKRect area, EndPlayPictureContent content)
    {
        var result = content.Result;
        using var panel = new ReadingsPanel(page, area, content, result.Knocks, Focus(content));
        AddHolds(panel, content);
        if (result.StopsAtHolds.Count > 0)
        {
            AddStop(panel, content, stops => stops.Low);
            AddStop(panel, content, stops => stops.High);
            panel.Name(new("stop", new LineStyle(1.2f, Ink.Plot(Ink.Text))));
        }

        panel.Draw(canvas, "Readings over time");
        if (result.StopsAtHolds is [.., var last])
        {
            NameStop(canvas, panel, area, "high stop", last.High);
            NameStop(canvas, panel, area, "low stop", last.Low);
        }
    }

    // What lies far off both stops, such as a plunger that rested elsewhere before, is cut off.
    private static (double Low, double High)? Focus(EndPlayPictureContent content)
    {
        var levels = content.Result.Holds.Select(hold => hold.Millimetres).Concat(content.Result.StopsAtHolds.SelectMany(stops => new[] { stops.Low, stops.High })).ToArray();
        return levels.Length < 2 || levels.Max() <= levels.Min() ? null : (levels.Min(), levels.Max());
    }

    private static void AddHolds(ReadingsPanel panel, EndPlayPictureContent content)
    {
        foreach (var hold in content.Result.Holds)
        {
            var (from, to) = (content.Seconds.Span[hold.FirstReading], content.Seconds.Span[hold.LastReading]);
            var level = panel.Shown(hold.Millimetres);
            if (hold.Counts)
            {
                panel.Panel.Plot.Add.Line(from, level, to, level).LineStyle = Held;
            }
            else
            {
                panel.Panel.Plot.Add.Plottable(new DashedLine([new(from, level), new(to, level)], Aside));
            }
        }

        if (content.Result.Holds.Any(hold => hold.Counts))
        {
            panel.Name(new("held", Held));
        }

        if (content.Result.Holds.Any(hold => !hold.Counts))
        {
            panel.Name(new("held, left out", new LineStyle(3, Ink.Plot(Ink.LeftOut)) { Pattern = LinePattern.Dotted }));
        }
    }

    private static void AddStop(ReadingsPanel panel, EndPlayPictureContent content, Func<(double Low, double High), double> which)
    {
        var (holds, stops) = (content.Result.Holds, content.Result.StopsAtHolds);
        List<Coordinates> line = [new(panel.From, panel.Shown(which(stops[0])))];
        line.AddRange(holds.Zip(stops, (hold, at) => new Coordinates(hold.Seconds, panel.Shown(which(at)))));
        line.Add(new(panel.To, panel.Shown(which(stops[^1]))));
        panel.Panel.Plot.Add.ScatterLine(line.ToArray()).LineStyle = new LineStyle(1.2f, Ink.Plot(Ink.Text));
    }

    private static void NameStop(SKCanvas canvas, ReadingsPanel panel, SKRect area, string name, double millimetres) =>
        Letters.Draw(canvas, name, new(area.Right + 6, panel.Panel.At(0, panel.Shown(millimetres)).Y + 4.5f), new(13, Ink.Text, Strong: true));
}
