using Handspun.Jobs.Lengths;
using Handspun.Pictures.Lettering;
using Handspun.Pictures.Page;
using Handspun.Pictures.Runout;
using Handspun.Pictures.Scales;
using ScottPlot;
using SkiaSharp;

namespace Handspun.Pictures.Readings;

/// <summary>The readings of a capture over time, with those left out marked; what was found in them is laid over.</summary>
internal sealed class ReadingsPanel : IDisposable
{
    private const int MostSingleMarkers = 600;
    private const int MostColumns = 500;
    private readonly SKRect _area;
    private readonly LengthUnit _unit;
    private readonly List<LegendEntry> _legend = [];

    /// <param name="page">The size of the whole page.</param>
    /// <param name="area">Where the data go.</param>
    /// <param name="content">The readings.</param>
    /// <param name="leftOut">Readings that were left out, by their place.</param>
    /// <param name="focus">The lowest and highest millimetres that matter; what lies far beyond is cut off. Null shows all.</param>
    public ReadingsPanel(SKSize page, SKRect area, ReadingsContent content, IReadOnlyCollection<int> leftOut, (double Low, double High)? focus)
    {
        (_area, _unit) = (area, content.Unit);
        var points = Points(content);
        var (from, to) = (points.Select(at => at.Point.X).DefaultIfEmpty(0).Min(), points.Select(at => at.Point.X).DefaultIfEmpty(1).Max());
        var rim = to > from ? (to - from) * 0.015 : 0.5;
        (Low, High) = Heights(points, focus, content.Unit);
        Panel = new Panel(
            page,
            area,
            new CoordinateRect(from - rim, to + rim, Low, High),
            AxisTicks.Round(from - rim, to + rim, wanted: Math.Max(4, (int)(area.Width / 90))),
            AxisTicks.ForLength(Low, High, wanted: Math.Max(3, (int)(area.Height / 32)), content.Unit));
        (From, To) = (from, to);
        var out_ = leftOut.ToHashSet();
        AddReadings([.. points.Where(at => !out_.Contains(at.Place)).Select(at => at.Point)]);
        AddKnocks([.. points.Where(at => out_.Contains(at.Place)).Select(at => at.Point)]);
    }

    /// <summary>What to lay over.</summary>
    public Panel Panel { get; }

    /// <summary>The lowest value shown.</summary>
    public double Low { get; }

    /// <summary>The highest value shown.</summary>
    public double High { get; }

    /// <summary>When the first reading was taken.</summary>
    public double From { get; }

    /// <summary>When the last reading was taken.</summary>
    public double To { get; }

    /// <summary>Names what was laid over.</summary>
    public void Name(LegendEntry entry) => _legend.Add(entry);

    /// <summary>A length in millimetres as the panel shows it.</summary>
    public double Shown(double millimetres) => LengthText.InUnit(millimetres, _unit);

    /// <summary>Draws all of it.</summary>
    public void Draw(SKCanvas canvas, string title)
    {
        Panel.Draw(canvas, "Time (s)", $"Reading ({LengthText.Symbol(_unit)})");
        Letters.Draw(canvas, title, new(_area.Left, _area.Top - 10), new(15, Ink.Text, Strong: true));
        LegendRow.Draw(canvas, _legend, _area.Right, _area.Top - 10);
    }

    public void Dispose() => Panel.Dispose();

    private static List<(int Place, Coordinates Point)> Points(ReadingsContent content)
    {
        List<(int, Coordinates)> points = [];
        for (var i = 0; i < content.Seconds.Length; i++)
        {
            var at = new Coordinates(content.Seconds.Span[i], LengthText.InUnit(content.Millimetres.Span[i], content.Unit));
            if (double.IsFinite(at.X) && double.IsFinite(at.Y))
            {
                points.Add((i, at));
            }
        }

        return points;
    }

    private static (double Low, double High) Heights(List<(int Place, Coordinates Point)> points, (double Low, double High)? focus, LengthUnit unit)
    {
        var (low, high) = focus is { } told
            ? (LengthText.InUnit(told.Low, unit), LengthText.InUnit(told.High, unit))
            : (points.Select(at => at.Point.Y).DefaultIfEmpty(0).Min(), points.Select(at => at.Point.Y).DefaultIfEmpty(0).Max());
        var least = unit.IsInch ? 0.0004 : 0.01;
        var (middle, half) = ((low + high) / 2, Math.Max(high - low, least) / 2);
        return (middle - half * 1.25, middle + half * 1.25);
    }

    private void AddReadings(Coordinates[] kept)
    {
        if (kept.Length > MostSingleMarkers)
        {
            Panel.Plot.Add.ScatterLine(Thinned.To(kept, MostColumns)).LineStyle = Strokes.ReadingsLine;
            Name(new("readings", Strokes.ReadingsLine));
        }
        else if (kept.Length > 0)
        {
            Panel.Plot.Add.Markers(kept).MarkerStyle = Strokes.Reading;
            Name(new("reading", Marker: Strokes.Reading));
        }
    }

    private void AddKnocks(Coordinates[] knocks)
    {
        var marker = Strokes.LeftOut(Metrology.Runout.RejectionReason.Knock);
        foreach (var knock in knocks.Where(at => at.Y >= Low && at.Y <= High))
        {
            Panel.Plot.Add.Marker(knock).MarkerStyle = marker;
        }

        if (knocks.Length > 0)
        {
            Name(new("left out: knock", Marker: marker));
        }
    }
}
