using System.Globalization;
using Handspun.Jobs.Lengths;
using Handspun.Metrology.Quantities;
using Handspun.Pictures.Lettering;
using Handspun.Pictures.Page;
using Handspun.Pictures.Runout;
using Handspun.Pictures.Scales;
using ScottPlot;
using SkiaSharp;

namespace Handspun.Pictures.Lift;

/// <summary>Lift over degrees of the crank: one lobe with its readings, or both of a cylinder, with where they open and close and what the card says.</summary>
internal static class LobePanel
{
    private const int MostReadings = 1500;

    /// <summary>Draws the panel.</summary>
    /// <param name="canvas">Where to draw.</param>
    /// <param name="page">The size of the whole page.</param>
    /// <param name="area">Where the data go.</param>
    /// <param name="lobes">The lobes; the second is drawn as a broken line.</param>
    /// <param name="readings">Readings as drawn; empty for none.</param>
    /// <param name="checking">The lift that opening and closing count from.</param>
    /// <param name="zero">What zero degrees is, for the axis.</param>
    /// <param name="topShown">Whether zero is top dead centre.</param>
    /// <param name="unit">The unit of lengths.</param>
    public static void Draw(SKCanvas canvas, SKSize page, SKRect area, IReadOnlyList<Lobe> lobes, IReadOnlyList<Coordinates> readings, Length checking, string zero, bool topShown, LengthUnit unit)
    {
        var (from, to) = (lobes.Min(lobe => lobe.CentreAt) - 180, lobes.Max(lobe => lobe.CentreAt) + 180);
        var lift = lobes.Max(lobe => lobe.CurveMillimetres.Max());
        var (low, high) = (LengthText.InUnit(-0.08 * lift, unit), LengthText.InUnit(1.16 * lift, unit));
        var level = LengthText.InUnit(checking.Millimetres, unit);
        using var panel = new Panel(
            page,
            area,
            new CoordinateRect(from, to, low, high),
            AxisTicks.Round(from, to, wanted: 10, smallestStep: 10),
            AxisTicks.ForLength(low, high, wanted: Math.Max(3, (int)(area.Height / 36)), unit));
        if (readings.Count > 0)
        {
            var every = Math.Max(1, readings.Count / MostReadings);
            panel.Plot.Add.Markers(readings.Where((_, place) => place % every == 0).ToArray()).MarkerStyle = Strokes.Reading;
        }

        panel.Plot.Add.Plottable(new DashedLine([new(from, level), new(to, level)], Strokes.Extension));
        foreach (var top in topShown ? [-360.0, 0, 360] : Array.Empty<double>())
        {
            panel.Plot.Add.Plottable(new DashedLine([new(top, low), new(top, high)], Strokes.TurnEdge));
        }

        for (var i = 0; i < lobes.Count; i++)
        {
            if (i == 0)
            {
                panel.Plot.Add.ScatterLine(lobes[i].Points(unit).ToArray()).LineStyle = Strokes.Profile;
            }
            else
            {
                panel.Plot.Add.Plottable(new DashedLine(lobes[i].Points(unit), Second));
            }

            foreach (var at in new[] { lobes[i].Opens, lobes[i].Closes })
            {
                panel.Plot.Add.Marker(at, level).MarkerStyle = Strokes.HighSpot;
            }

            foreach (var at in new[] { lobes[i].Card.Opens, lobes[i].Card.Closes }.OfType<double>())
            {
                panel.Plot.Add.Marker(at, level).MarkerStyle = Strokes.LowSpot;
            }
        }

        panel.Draw(canvas, $"Crank (° from {zero})", $"Lift at the lifter ({LengthText.Symbol(unit)})");
        Letters.Draw(canvas, $"Lift over the crank, counted from {LengthText.Of(checking, unit)}", new(area.Left, area.Top - 10), new(15, Ink.Text, Strong: true));
        LegendRow.Draw(canvas, [.. Legend(lobes, readings.Count > 0)], area.Right, area.Top - 10);
        foreach (var lobe in lobes)
        {
            Name(canvas, panel, lobe, level, lobes.Count > 1, unit);
        }

        if (topShown)
        {
            Letters.Draw(canvas, "TDC", new(panel.At(0, 0).X + 5, area.Top + 15), new(12, Ink.QuietText), TextAnchor.Left, halo: true);
        }
    }

    private static Dash Second { get; } = new(Ink.Limit, 2, 9, 5);

    private static void Name(SKCanvas canvas, Panel panel, Lobe lobe, double level, bool named, LengthUnit unit)
    {
        var style = new TextStyle(13, Ink.Text);
        var quiet = new TextStyle(13, Ink.QuietText);
        var y = panel.At(0, level).Y;
        Letters.Draw(canvas, $"opens {Degrees(lobe.Opens)}", new(panel.At(lobe.Opens, 0).X - 9, y - 8), style, TextAnchor.Right, halo: true);
        Letters.Draw(canvas, $"closes {Degrees(lobe.Closes)}", new(panel.At(lobe.Closes, 0).X + 9, y - 8), style, TextAnchor.Left, halo: true);
        if (lobe.Card.Opens is { } opens)
        {
            Letters.Draw(canvas, $"card {Degrees(opens)}", new(panel.At(Math.Min(opens, lobe.Opens), 0).X - 9, y + 18), quiet, TextAnchor.Right, halo: true);
        }

        if (lobe.Card.Closes is { } closes)
        {
            Letters.Draw(canvas, $"card {Degrees(closes)}", new(panel.At(Math.Max(closes, lobe.Closes), 0).X + 9, y + 18), quiet, TextAnchor.Left, halo: true);
        }

        var card = lobe.Card.Centre is { } centre ? $", card {Degrees(centre)}" : "";
        var highest = lobe.CurveMillimetres.Max();
        var name = named ? $"{lobe.Name} {Degrees(lobe.CentreAt)}{card}" : $"centreline {Degrees(lobe.CentreAt)}{card}";
        var top = panel.At(lobe.CentreAt, LengthText.InUnit(highest, unit)).Y;
        Letters.Draw(canvas, name, new(panel.At(lobe.CentreAt, 0).X, Math.Max(top - 12, 0)), style, TextAnchor.Centre, halo: true);
    }

    private static IEnumerable<LegendEntry> Legend(IReadOnlyList<Lobe> lobes, bool readings)
    {
        if (readings)
        {
            yield return new("reading", Marker: Strokes.Reading);
        }

        yield return new(lobes.Count > 1 ? lobes[0].Name : "lift", Strokes.Profile);
        yield return new("opens, closes", Marker: Strokes.HighSpot);
        if (lobes.Any(lobe => lobe.Card.Opens is not null || lobe.Card.Closes is not null))
        {
            yield return new("by the card", Marker: Strokes.LowSpot);
        }
    }

    private static string Degrees(double degrees) => string.Create(CultureInfo.InvariantCulture, $"{degrees:0.0}°").Replace('-', '\u2212');
}
