using ScottPlot;
using SkiaSharp;

namespace Handspun.Pictures.Page;

/// <summary>A dashed line, cut into its dashes here: the SVG writer knows no dash patterns and would draw it whole.</summary>
/// <param name="Colour">Its colour.</param>
/// <param name="Width">Its width.</param>
/// <param name="On">Length of a dash.</param>
/// <param name="Off">Length of a gap.</param>
internal sealed record Dash(SKColor Colour, float Width, float On, float Off)
{
    /// <summary>Draws the path as dashes.</summary>
    public void Draw(SKCanvas canvas, SKPath path)
    {
        using var measure = new SKPathMeasure(path);
        using var dashes = new SKPath();
        do
        {
            for (var at = 0f; at < measure.Length; at += On + Off)
            {
                measure.GetSegment(at, Math.Min(at + On, measure.Length), dashes, startWithMoveTo: true);
            }
        }
        while (measure.NextContour());

        using var paint = new SKPaint { Color = Colour, IsStroke = true, StrokeWidth = Width, IsAntialias = true };
        canvas.DrawPath(dashes, paint);
    }
}

/// <summary>A dashed line in a plot, from point to point.</summary>
internal sealed class DashedLine(IReadOnlyList<Coordinates> points, Dash dash) : IPlottable
{
    public bool IsVisible { get; set; } = true;

    public IAxes Axes { get; set; } = new Axes();

    public IEnumerable<LegendItem> LegendItems => [];

    public AxisLimits GetAxisLimits() => AxisLimits.NoLimits;

    public void Render(RenderPack rp)
    {
        using var path = new SKPath();
        for (var i = 0; i < points.Count; i++)
        {
            var at = Axes.GetPixel(points[i]).ToSKPoint();
            if (i == 0)
            {
                path.MoveTo(at);
            }
            else
            {
                path.LineTo(at);
            }
        }

        dash.Draw(rp.Canvas, path);
    }
}
