using System.Globalization;
using Handspun.Jobs.History;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Limits;
using Handspun.Pictures.Lettering;
using Handspun.Pictures.Page;
using Handspun.Pictures.Runout;
using Handspun.Pictures.Scales;
using ScottPlot;
using SkiaSharp;

namespace Handspun.Pictures.History;

/// <summary>The still picture of one point of a bike over the years: each job's result with its uncertainty, and the limit of the newest job as a band.</summary>
public static class HistoryPicture
{
    private const int Height = 330;
    private const float Margin = RecordPage.Margin;
    private static readonly MarkerStyle Result = new(MarkerShape.FilledCircle, 10, Ink.Plot(Ink.Text)) { LineWidth = 0, OutlineStyle = LineStyle.None };

    /// <summary>Lays the picture out; it is drawn when it is written.</summary>
    /// <param name="point">The point, with at least one result.</param>
    /// <param name="bike">The bike in one line.</param>
    /// <param name="unit">The unit shown.</param>
    /// <exception cref="ArgumentException">There is no result.</exception>
    /// <exception cref="MissingFontException">The fonts that the program brings along are not there.</exception>
    public static Picture Draw(PointHistory point, string bike, LengthUnit unit)
    {
        ArgumentNullException.ThrowIfNull(point);
        if (point.Results.Count == 0)
        {
            throw new ArgumentException("There is no result to show.", nameof(point));
        }

        Typefaces.Check();
        var title = $"{point.Title}, {bike}";
        var limit = point.Results[^1].Verdict.Limit;
        var said = string.Join("; ", point.Results.Select(result => $"{Day(result)} {InWords(result, unit)}"));
        return new(new(RecordPage.Width, Height), title, $"{said}.{(limit is null ? "" : $" The limit is {LimitSentence.Bounds(limit, unit)}.")}", (canvas, page) =>
        {
            var style = new TextStyle(18, Ink.Text, Strong: true);
            Letters.Draw(canvas, TextFit.OneLine(title, page.Width - 2 * Margin, style), new(Margin, Margin + 16), style);
            DrawPanel(canvas, page, new(Margin + 76, 74, page.Width - Margin - 12, page.Height - 58), point, limit, unit);
        });
    }

    private static void DrawPanel(SKCanvas canvas, SKSize page, SKRect area, PointHistory point, Limit? limit, LengthUnit unit)
    {
        var found = point.Results.Select(result => (X: Days(result), Y: Shown(Figures(result).Value!.Value.Millimetres, unit), Doubt: Shown(Figures(result).ValueU95!.Value.Millimetres, unit))).ToArray();
        var bounds = Bounds(limit, unit, found.Max(one => Math.Abs(one.Y) + one.Doubt));
        double[] heights = [.. found.SelectMany(one => new[] { one.Y - one.Doubt, one.Y + one.Doubt }), .. new[] { bounds.Lower, bounds.Upper }.OfType<double>()];
        var room = Math.Max(heights.Max() - heights.Min(), Shown(0.005, unit)) * 0.18;
        var (low, high) = (heights.Min() >= 0 ? Math.Max(0, heights.Min() - room) : heights.Min() - room, heights.Max() + room);
        var aside = Math.Max(30, (found[^1].X - found[0].X) * 0.06);
        var (first, last) = (found[0].X - aside, found[^1].X + aside);
        using var panel = new Panel(page, area, new CoordinateRect(first, last, low, high), DateTicks(found.Select(one => one.X), area.Width / (last - first)), AxisTicks.ForLength(low, high, wanted: 6, unit));
        if (limit is not null)
        {
            var band = panel.Plot.Add.Rectangle(first, last, bounds.Lower ?? low, bounds.Upper ?? high);
            band.FillColor = Ink.Plot(Ink.Allowed);
            band.LineWidth = 0;
            foreach (var edge in new[] { bounds.Lower, bounds.Upper }.OfType<double>())
            {
                panel.Plot.Add.Plottable(new DashedLine([new(first, edge), new(last, edge)], Strokes.Limit));
            }
        }

        panel.Plot.Add.ScatterLine(found.Select(one => new Coordinates(one.X, one.Y)).ToArray(), Ink.Plot(Ink.Readings)).LineWidth = 1.2f;
        foreach (var (x, y, doubt) in found)
        {
            panel.Plot.Add.Line(x, y - doubt, x, y + doubt).LineStyle = new(1.6f, Ink.Plot(Ink.Text));
        }

        panel.Plot.Add.Markers(found.Select(one => new Coordinates(one.X, one.Y)).ToArray()).MarkerStyle = Result;
        panel.Draw(canvas, "Date of the result", $"Result ({LengthText.Symbol(unit)})");
        List<LegendEntry> legend = [new("result that counts, \u00b1 its uncertainty (k = 2)", Marker: Result)];
        if (limit is not null)
        {
            legend.Add(new($"allowed today, {LimitSentence.Bounds(limit, unit)}", Band: Ink.Allowed));
        }

        LegendRow.Draw(canvas, legend, area.Right, area.Top - 10);
    }

    // A bound far from everything found would press it flat.
    private static (double? Lower, double? Upper) Bounds(Limit? limit, LengthUnit unit, double most)
    {
        double? Near(double? bound) => bound is { } at && Math.Abs(Shown(at, unit)) <= 8 * most ? Shown(at, unit) : null;
        return (Near(limit?.LowerMillimetres), Near(limit?.UpperMillimetres));
    }

    // The dates of the results themselves, as many as have room.
    private static AxisTicks DateTicks(IEnumerable<double> days, double pixelsPerDay)
    {
        var marks = new List<(double, string)>();
        foreach (var day in days)
        {
            if (marks.Count == 0 || (day - marks[^1].Item1) * pixelsPerDay > 96)
            {
                marks.Add((day, DateTime.UnixEpoch.AddDays(day).ToString("d MMM yyyy", CultureInfo.InvariantCulture)));
            }
        }

        return new(1, marks);
    }

    private static Jobs.Records.ResultFigures Figures(PastResult result) => result.Verdict.Record!.Figures;

    private static double Days(PastResult result) => (result.Verdict.Record!.At.LocalDateTime - DateTime.UnixEpoch).TotalDays;

    private static string Day(PastResult result) => result.Verdict.Record!.At.ToLocalTime().ToString("d MMM yyyy", CultureInfo.InvariantCulture);

    private static string InWords(PastResult result, LengthUnit unit) => LengthText.WithUncertainty(Figures(result).Value!.Value, Figures(result).ValueU95!.Value, unit);

    private static double Shown(double millimetres, LengthUnit unit) => LengthText.InUnit(millimetres, unit);
}
