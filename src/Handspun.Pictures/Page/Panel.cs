using Handspun.Pictures.Lettering;
using Handspun.Pictures.Scales;
using ScottPlot;
using ScottPlot.TickGenerators;
using SkiaSharp;

namespace Handspun.Pictures.Page;

/// <summary>One plot on a page: the plotting library draws lines and markers, the letters around them are ours.</summary>
internal sealed class Panel : IDisposable
{
    private readonly SKSize _page;
    private readonly SKRect _area;
    private readonly AxisTicks _across;
    private readonly AxisTicks _up;

    /// <param name="page">The size of the whole page.</param>
    /// <param name="area">Where the data go; marks and titles lie around it.</param>
    /// <param name="limits">The values at its edges.</param>
    /// <param name="across">Marks along the bottom.</param>
    /// <param name="up">Marks along the left side.</param>
    public Panel(SKSize page, SKRect area, CoordinateRect limits, AxisTicks across, AxisTicks up)
    {
        (_page, _area, _across, _up) = (page, area, across, up);
        Plot.RenderManager.ClearCanvasBeforeEachRender = false;   // other panels are on the page already
        Plot.FigureBackground.Color = Colors.Transparent;
        Plot.Axes.SetLimits(limits);
        Plot.Axes.Bottom.TickGenerator = Marks(across);
        Plot.Axes.Left.TickGenerator = Marks(up);
        Plot.Axes.FrameColor(Ink.Plot(Ink.Frame));
        Plot.Axes.FrameWidth(1);
        foreach (var axis in Plot.Axes.GetAxes())
        {
            axis.TickLabelStyle.IsVisible = false;
            axis.MajorTickStyle.Color = Ink.Plot(Ink.Frame);
            axis.MajorTickStyle.Length = 4;
        }

        Plot.Grid.MajorLineColor = Ink.Plot(Ink.Grid);
        Plot.Layout.Fixed(new PixelRect(area.Left, area.Right, area.Bottom, area.Top));

        // The library renders twice over the first time it is asked; that it may do before there is anything to draw.
        using var nowhere = new SKNoDrawCanvas((int)page.Width, (int)page.Height);
        DrawPlot(nowhere);
    }

    /// <summary>What to add lines and markers to.</summary>
    public Plot Plot { get; } = new();

    /// <summary>Where a value lies on the page.</summary>
    public SKPoint At(double across, double up)
    {
        var limits = Plot.Axes.GetLimits();
        return new(
            (float)(_area.Left + _area.Width * (across - limits.Left) / (limits.Right - limits.Left)),
            (float)(_area.Bottom - _area.Height * (up - limits.Bottom) / (limits.Top - limits.Bottom)));
    }

    /// <summary>Draws what was added, with marks and titles.</summary>
    public void Draw(SKCanvas canvas, string titleAcross, string titleUp)
    {
        DrawPlot(canvas);
        var marks = new TextStyle(13, Ink.QuietText);
        var titles = new TextStyle(14, Ink.Text);
        foreach (var (value, text) in _across.Marks)
        {
            Letters.Draw(canvas, text, new(At(value, 0).X, _area.Bottom + 18), marks, TextAnchor.Centre);
        }

        var widest = 0f;
        foreach (var (value, text) in _up.Marks)
        {
            Letters.Draw(canvas, text, new(_area.Left - 8, At(0, value).Y + 4.5f), marks, TextAnchor.Right);
            widest = Math.Max(widest, Letters.Width(text, marks));
        }

        Letters.Draw(canvas, titleAcross, new(_area.MidX, _area.Bottom + 38), titles, TextAnchor.Centre);
        Letters.DrawUpwards(canvas, titleUp, new(_area.Left - 18 - widest, _area.MidY), titles);
    }

    /// <summary>Draws what was added, with no letters.</summary>
    public void DrawPlot(SKCanvas canvas)
    {
        canvas.Save();
        Plot.Render(canvas, new PixelRect(0, _page.Width, _page.Height, 0));
        canvas.Restore();
    }

    public void Dispose() => Plot.Dispose();

    private static NumericManual Marks(AxisTicks ticks) =>
        new([.. ticks.Marks.Select(mark => new Tick(mark.Value, "", isMajor: true))]);
}
