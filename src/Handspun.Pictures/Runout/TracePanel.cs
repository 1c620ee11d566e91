using Handspun.Jobs.Lengths;
using Handspun.Metrology.Runout;
using Handspun.Pictures.Lettering;
using Handspun.Pictures.Page;
using Handspun.Pictures.Scales;
using ScottPlot;
using SkiaSharp;

namespace Handspun.Pictures.Runout;

/// <summary>The readings over time: what the gauge showed, what was left out of it, and what the fitted profile says it should have shown.</summary>
internal static class TracePanel
{
    private const int MostSingleMarkers = 600;
    private const int MostStandingMarkers = 300;
    private const int MostColumns = 500;
    private const double RoomBelow = 1.12;
    private const double RoomAbove = 1.38;   // for the turns' names

    /// <summary>Draws the panel.</summary>
    /// <param name="canvas">Where to draw.</param>
    /// <param name="page">The size of the whole page.</param>
    /// <param name="area">Where the data go.</param>
    /// <param name="trace">What to draw.</param>
    /// <param name="unit">The unit of its lengths.</param>
    /// <param name="least">How far from bottom to top the scale reaches at least.</param>
    public static void Draw(SKCanvas canvas, SKSize page, SKRect area, Trace trace, LengthUnit unit, double least = 0)
    {
        var (from, to) = TimeRange(trace);
        var (low, high) = HeightRange(trace, unit, least);
        using var panel = new Panel(
            page,
            area,
            new CoordinateRect(from, to, low, high),
            AxisTicks.Round(from, to, wanted: Math.Max(4, (int)(area.Width / 90))),
            AxisTicks.ForLength(low, high, wanted: Math.Max(3, (int)(area.Height / 29)), unit));

        AddReadings(panel.Plot, trace);
        AddLeftOut(panel, trace, area, low, high);
        foreach (var stretch in trace.Fitted)
        {
            var fitted = panel.Plot.Add.ScatterLine(Thinned.To(stretch, MostColumns));
            fitted.LineStyle = Strokes.Profile;
            fitted.LineWidth = 1.5f;
        }

        foreach (var turn in trace.Turns.Skip(1))
        {
            panel.Plot.Add.Plottable(new DashedLine([new(turn.From, low), new(turn.From, high)], Strokes.TurnEdge));
        }

        panel.Draw(canvas, "Time (s)", $"Reading ({LengthText.Symbol(unit)})");
        NameTurns(canvas, panel, area, trace.Turns, high);
        Letters.Draw(canvas, "Readings over time", new(area.Left, area.Top - 10), new(15, Ink.Text, Strong: true));
        LegendRow.Draw(canvas, Legend(trace, low, high), area.Right, area.Top - 10);
    }

    private static void AddReadings(Plot plot, Trace trace)
    {
        if (trace.Kept.Count > MostSingleMarkers)
        {
            plot.Add.ScatterLine(Thinned.To(trace.Kept, MostColumns)).LineStyle = Strokes.ReadingsLine;
        }
        else if (trace.Kept.Count > 0)
        {
            plot.Add.Markers(trace.Kept.ToArray()).MarkerStyle = Strokes.Reading;
        }
    }

    private static void AddLeftOut(Panel panel, Trace trace, SKRect area, double low, double high)
    {
        var unit = (high - low) / area.Height;
        var every = StandingStep(trace);
        var standing = 0;
        foreach (var (at, reason) in trace.LeftOut)
        {
            if (reason == RejectionReason.Standing && standing++ % every != 0)
            {
                continue;
            }

            var (off, above) = (at.Y < low || at.Y > high, at.Y > high);
            var marker = panel.Plot.Add.Marker(at.X, off ? above ? high - 28 * unit : low + 6 * unit : at.Y);   // below the turns' names
            marker.MarkerStyle = off ? Strokes.OffScale(above) : Strokes.LeftOut(reason);
        }
    }

    // A shaft may stand for minutes; a few hundred markers say as much as thousands.
    private static int StandingStep(Trace trace) =>
        Math.Max(1, (trace.LeftOut.Count(left => left.Reason == RejectionReason.Standing) + MostStandingMarkers - 1) / MostStandingMarkers);

    private static void NameTurns(SKCanvas canvas, Panel panel, SKRect area, IReadOnlyList<TurnSpan> turns, double high)
    {
        var style = new TextStyle(12, Ink.QuietText);
        foreach (var turn in turns)
        {
            var (left, right) = (panel.At(turn.From, high).X, panel.At(turn.To, high).X);
            var name = right - left > 48 ? $"turn {turn.Number}" : $"{turn.Number}";
            if (right - left > 18)
            {
                Letters.Draw(canvas, name, new((left + right) / 2, area.Top + 15), style, TextAnchor.Centre, halo: true);
            }
        }
    }

    private static List<LegendEntry> Legend(Trace trace, double low, double high)
    {
        var entries = new List<LegendEntry>();
        if (trace.Kept.Count > 0)
        {
            entries.Add(trace.Kept.Count > MostSingleMarkers
                ? new("readings", Strokes.ReadingsLine)
                : new("reading", Marker: Strokes.Reading));
        }

        if (trace.Fitted.Count > 0)
        {
            entries.Add(new("fitted", Strokes.Profile));
        }

        var inside = trace.LeftOut.Where(left => left.At.Y >= low && left.At.Y <= high).Select(left => left.Reason).ToHashSet();
        if (inside.Contains(RejectionReason.Knock))
        {
            entries.Add(new("left out: knock", Marker: Strokes.LeftOut(RejectionReason.Knock)));
        }

        if (inside.Contains(RejectionReason.LocalFault))
        {
            entries.Add(new("left out: narrow place", Marker: Strokes.LeftOut(RejectionReason.LocalFault)));
        }

        if (inside.Contains(RejectionReason.Stuck))
        {
            entries.Add(new("left out: gauge stuck", Marker: Strokes.LeftOut(RejectionReason.Stuck)));
        }

        if (inside.Contains(RejectionReason.Standing))
        {
            var every = StandingStep(trace);
            entries.Add(new(every == 1 ? "left out: standing" : $"left out: standing (one in {every})", Marker: Strokes.LeftOut(RejectionReason.Standing)));
        }

        if (trace.LeftOut.Any(left => left.At.Y < low || left.At.Y > high))
        {
            entries.Add(new("left out: off this scale", Marker: Strokes.OffScale(above: true)));
        }

        return entries;
    }

    private static (double From, double To) TimeRange(Trace trace)
    {
        var times = trace.Kept.Select(at => at.X).Concat(trace.LeftOut.Select(left => left.At.X)).DefaultIfEmpty(0).ToArray();
        var (from, to) = (times.Min(), times.Max());
        var rim = to > from ? (to - from) * 0.015 : 0.5;
        return (from - rim, to + rim);
    }

    /// <summary>How far from bottom to top the scale of a trace reaches by itself.</summary>
    public static double SpanOf(Trace trace, LengthUnit unit)
    {
        var (low, high) = HeightRange(trace, unit, 0);
        return high - low;
    }

    // A knock may be a hundred times the runout; it may stretch the scale to twice the shaft's own movement and no further.
    private static (double Low, double High) HeightRange(Trace trace, LengthUnit unit, double leastSpan)
    {
        var sure = trace.Kept.Concat(trace.Fitted.SelectMany(stretch => stretch)).Select(at => at.Y).DefaultIfEmpty(trace.LeftOut.Select(left => left.At.Y).FirstOrDefault()).ToArray();
        var (low, high) = (sure.Min(), sure.Max());
        var least = unit.IsInch ? 0.0004 : 0.01;
        var movement = Math.Max(high - low, least);
        var near = trace.LeftOut.Select(left => left.At.Y).Where(y => y > low - movement / 2 && y < high + movement / 2).ToArray();
        low = Math.Min(low, near.DefaultIfEmpty(low).Min());
        high = Math.Max(high, near.DefaultIfEmpty(high).Max());
        var middle = (low + high) / 2;
        var half = Math.Max(Math.Max(high - low, least) / 2, leastSpan / (RoomBelow + RoomAbove));
        return (middle - half * RoomBelow, middle + half * RoomAbove);
    }
}
