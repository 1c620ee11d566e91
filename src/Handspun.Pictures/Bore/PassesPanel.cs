using Handspun.Pictures.Page;
using Handspun.Pictures.Readings;
using ScottPlot;
using SkiaSharp;

namespace Handspun.Pictures.Bore;

/// <summary>The rocks over time, with the turning point of every pass and what the gauge shows of the bore or the body.</summary>
internal static class PassesPanel
{
    private static readonly LineStyle Bore = new(1.2f, Ink.Plot(Ink.Text));

    /// <summary>Draws the panel.</summary>
    public static void Draw(SKCanvas canvas, SKSize page, SKRect area, BorePictureContent content)
    {
        var passes = content.Result.ByPass;
        using var panel = new ReadingsPanel(page, area, content, content.Result.Knocks, Focus(content));
        if (passes.Count > 0)
        {
            var shown = panel.Shown(passes.Average(pass => pass.Millimetres));
            panel.Panel.Plot.Add.Line(panel.From, shown, panel.To, shown).LineStyle = Bore;
            panel.Name(new(content.Result.Outside ? "the body" : "the bore", Bore));
            var turn = Turn(content);
            foreach (var pass in passes)
            {
                panel.Panel.Plot.Add.Marker(new Coordinates(pass.Seconds, panel.Shown(pass.Millimetres))).MarkerStyle = turn;
            }

            panel.Name(new("turning point", Marker: turn));
        }

        panel.Draw(canvas, "Readings over time");
    }

    // Its tip points to where the reading turns back from.
    private static MarkerStyle Turn(BorePictureContent content) =>
        new(content.TurnsAtTheTop ? MarkerShape.FilledTriangleUp : MarkerShape.FilledTriangleDown, 11, Ink.Plot(Ink.Profile)) { LineWidth = 0, OutlineStyle = LineStyle.None };

    // What the gauge showed before it was in the bore, or on the body, is cut off.
    private static (double Low, double High)? Focus(BorePictureContent content)
    {
        var passes = content.Result.ByPass;
        if (passes.Count < 2)
        {
            return null;
        }

        var between = content.Millimetres.Span[passes[0].Reading..(passes[^1].Reading + 1)].ToArray();
        return between.Max() > between.Min() ? (between.Min(), between.Max()) : null;
    }
}
