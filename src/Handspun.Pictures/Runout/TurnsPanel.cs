using Handspun.Jobs.Lengths;
using Handspun.Pictures.Lettering;
using Handspun.Pictures.Page;
using Handspun.Pictures.Scales;
using ScottPlot;
using SkiaSharp;

namespace Handspun.Pictures.Runout;

/// <summary>Every turn laid over one, the fitted profile through them, and the runout as a dimension from the low spot to the high spot.</summary>
internal static class TurnsPanel
{
    private const int MostSingleMarkers = 48;
    private const int MostColumns = 400;
    private const double WidestJoin = 15;   // degrees

    /// <summary>Draws the panel.</summary>
    /// <param name="canvas">Where to draw.</param>
    /// <param name="page">The size of the whole page.</param>
    /// <param name="area">Where the data go; the dimension takes <see cref="Dimension.Room"/> to the right of it.</param>
    /// <param name="content">What was measured.</param>
    /// <param name="profile">The same as heights.</param>
    /// <param name="scale">The heights to show.</param>
    public static void Draw(SKCanvas canvas, SKSize page, SKRect area, RunoutPictureContent content, TurnedProfile profile, HeightScale scale)
    {
        using var panel = new Panel(
            page,
            area,
            new CoordinateRect(0, 360, scale.Low, scale.High),
            AxisTicks.OneTurn,
            AxisTicks.ForLength(scale.Low, scale.High, wanted: Math.Max(4, (int)(area.Height / 36)), content.Unit));
        AddLimit(panel.Plot, scale);
        AddTurns(panel.Plot, profile);
        panel.Plot.Add.ScatterLine(profile.Curve.ToArray()).LineStyle = Strokes.Profile;
        AddExtension(panel.Plot, profile.High);
        AddExtension(panel.Plot, profile.Low);
        panel.Draw(
            canvas,
            $"Angle turned from {Wording.Zero(content.Result.Reference)} (degrees)",
            $"Height above the low spot ({LengthText.Symbol(content.Unit)})");

        NameSpots(canvas, panel, area, content, profile);
        NameLimit(canvas, panel, area, content, profile, scale);
        new Dimension("TIR", content.Result.Tir!.Value, content.Result.TirU95, content.Unit).Draw(canvas, area.Right, panel);
        Letters.Draw(canvas, "Every turn laid over one", new(area.Left, area.Top - 10), new(15, Ink.Text, Strong: true));
        LegendRow.Draw(canvas, Legend(profile), area.Right + Dimension.Room, area.Top - 10);
    }

    private static void AddLimit(Plot plot, HeightScale scale)
    {
        if (scale.Limit is not { } limit)
        {
            return;
        }

        var top = limit.Upper is { } upper && !limit.OffScale ? upper : scale.High;
        var bottom = limit.Lower ?? 0;
        if (bottom < scale.High)
        {
            var band = plot.Add.Rectangle(0, 360, bottom, Math.Min(top, scale.High));
            band.FillColor = Ink.Plot(Ink.Allowed);
            band.LineWidth = 0;
        }

        foreach (var edge in (ReadOnlySpan<double?>)[limit.Lower, limit.OffScale ? null : limit.Upper])
        {
            if (edge is { } height && height < scale.High)
            {
                plot.Add.Plottable(new DashedLine([new(0, height), new(360, height)], Strokes.Limit));
            }
        }
    }

    // A line joins close readings and a few of them carry the turn's own marker; readings far apart are not joined, for the shaft is not straight between them.
    private static void AddTurns(Plot plot, TurnedProfile profile)
    {
        foreach (var turn in profile.Turns)
        {
            var points = turn.Points.ToArray();
            var every = 1;
            if (points.Length > MostSingleMarkers)
            {
                foreach (var run in Runs(points))
                {
                    plot.Add.ScatterLine(Thinned.To(run, MostColumns)).LineStyle = Strokes.TurnLine(Kind(profile, turn));
                }

                every = (points.Length + MostSingleMarkers / 2 - 1) / (MostSingleMarkers / 2);
            }

            var shift = turn.Number * every / 4 % every;   // markers of different turns do not sit on one another
            plot.Add.Markers(points.Where((_, i) => i % every == shift).ToArray()).MarkerStyle = Strokes.Turn(Kind(profile, turn));
        }
    }

    private static IEnumerable<Coordinates[]> Runs(Coordinates[] points)
    {
        var from = 0;
        for (var i = 1; i <= points.Length; i++)
        {
            if (i == points.Length || points[i].X - points[i - 1].X > WidestJoin)
            {
                yield return points[from..i];
                from = i;
            }
        }
    }

    private static void AddExtension(Plot plot, Coordinates spot) =>
        plot.Add.Plottable(new DashedLine([spot, new(360, spot.Y)], Strokes.Extension));

    private static void NameSpots(SKCanvas canvas, Panel panel, SKRect area, RunoutPictureContent content, TurnedProfile profile)
    {
        var style = new TextStyle(14, Ink.Text, Strong: true);
        using var paint = Paint.NewDisposablePaint();
        Name(Wording.HighSpot(content.Result, profile.High.X), profile.High, Strokes.HighSpot, pointer: -7, below: -18);
        Name($"low spot {Wording.Degrees(profile.Low.X)}", profile.Low, Strokes.LowSpot, pointer: 7, below: 27);

        void Name(string text, Coordinates spot, MarkerStyle marker, float pointer, float below)
        {
            var at = panel.At(spot.X, spot.Y);
            marker.Render(canvas, new Pixel(at.X, at.Y + pointer), paint);   // its tip is on the spot
            var half = Letters.Width(text, style) / 2 + 6;
            Letters.Draw(canvas, text, new(Math.Clamp(at.X, area.Left + half, area.Right - half), at.Y + below), style, TextAnchor.Centre, halo: true);
        }
    }

    private static void NameLimit(SKCanvas canvas, Panel panel, SKRect area, RunoutPictureContent content, TurnedProfile profile, HeightScale scale)
    {
        if (content.Limit is not { } limit || scale.Limit is not { } band)
        {
            return;
        }

        var style = new TextStyle(13, Ink.Limit, Strong: true);
        var edge = band.Upper ?? band.Lower!.Value;
        var text = band.OffScale ? $"limit {Wording.Limit(limit, content.Unit)}, above this scale" : $"limit {Wording.Limit(limit, content.Unit)}";
        var half = Letters.Width(text, style) / 2 + 6;
        var runoutClose = panel.At(0, edge).Y - panel.At(0, scale.Runout).Y is > 0 and < 22;
        var baseline = band.OffScale ? area.Top + 16 : panel.At(0, edge).Y + (runoutClose ? 16 : -6);   // clear of the runout's own line
        // Where the shaft is low, and away from the high spot's name.
        var clear = profile.Curve.Where(at => Math.Abs(at.X - profile.High.X) >= 110).MinBy(at => at.Y);
        Letters.Draw(canvas, text, new(Math.Clamp(panel.At(clear.X, 0).X, area.Left + half, area.Right - half), baseline), style, TextAnchor.Centre, halo: true);
    }

    // More turns than can be told apart are all drawn alike.
    private static int Kind(TurnedProfile profile, TurnReadings turn) => profile.Turns.Count <= Strokes.TurnKinds ? turn.Number - profile.Turns[0].Number : 0;

    private static List<LegendEntry> Legend(TurnedProfile profile)
    {
        List<LegendEntry> entries = profile.Turns.Count <= Strokes.TurnKinds
            ? [.. profile.Turns.Select((turn, i) => new LegendEntry(i == 0 ? $"turn {turn.Number}" : $"{turn.Number}", Marker: Strokes.Turn(Kind(profile, turn))))]
            : [new($"turns 1 to {profile.Turns[^1].Number}", Marker: Strokes.Turn(0))];
        entries.Add(new("fitted profile", Strokes.Profile));
        return entries;
    }
}
