using Handspun.Jobs.Lengths;
using Handspun.Pictures.Lettering;
using Handspun.Pictures.Page;
using Handspun.Pictures.Scales;
using ScottPlot;
using SkiaSharp;

namespace Handspun.Pictures.Runout;

/// <summary>The profile about a circle, as one would chalk it on the shaft, its heights enlarged beyond all measure.</summary>
internal static class RingPanel
{
    private const double InnerRadius = 0.45;
    private static readonly double[] Upright = [0, 180];
    private static readonly double[] Diagonals = [45, 135, 225, 315];

    /// <summary>Draws the panel.</summary>
    /// <param name="canvas">Where to draw.</param>
    /// <param name="page">The size of the whole page.</param>
    /// <param name="column">Where everything goes, letters included.</param>
    /// <param name="content">What was measured.</param>
    /// <param name="profile">The same as heights.</param>
    /// <param name="scale">The heights to show.</param>
    public static void Draw(SKCanvas canvas, SKSize page, SKRect column, RunoutPictureContent content, TurnedProfile profile, HeightScale scale)
    {
        var radius = Math.Min(column.Width / 2 - 38, (column.Height - 92) / 2);
        var centre = new SKPoint(column.MidX, column.Top + 28 + radius);
        var square = new SKRect(centre.X - radius, centre.Y - radius, centre.X + radius, centre.Y + radius);
        var rings = AxisTicks.ForLength(0, scale.HighestMarked, wanted: 4, content.Unit).WithOneBeyond(Math.Max(scale.HighestMarked, 1e-9));
        var top = rings.Marks[^1].Value;
        var none = new AxisTicks(1, []);
        using var panel = new Panel(page, square, new CoordinateRect(-1.04, 1.04, -1.04, 1.04), none, none);
        Coordinates At(double degrees, double height)
        {
            var out_ = InnerRadius + (1 - InnerRadius) * height / top;
            var (sine, cosine) = Math.SinCos(degrees * Math.PI / 180);
            return new(out_ * sine, out_ * cosine);   // zero at the top, clockwise
        }

        panel.Plot.HideGrid();
        panel.Plot.Axes.Frame(false);
        AddShaft(panel.Plot, profile, At);
        var names = NamesAt(profile);
        AddRings(panel.Plot, rings, At, scale, names);
        panel.Plot.Add.ScatterLine(profile.Curve.Select(point => At(point.X, point.Y)).ToArray()).LineStyle = Strokes.Profile;
        FaultMarks.AddTo(panel.Plot, content.Result.Faults);
        AddSpot(panel.Plot, profile.Low, Strokes.LowSpot, At);
        AddSpot(panel.Plot, profile.High, Strokes.HighSpot, At);
        panel.DrawPlot(canvas);

        var outer = radius + 6;
        NameDirections(canvas, centre, outer, content);
        NameRings(canvas, panel, rings, At, names);
        NameSpots(canvas, centre, profile);
        var note = new TextStyle(13, Ink.QuietText);
        var symbol = LengthText.Symbol(content.Unit);
        Letters.Draw(canvas, "Profile about a circle", new(column.MidX, column.Top - 10), new(15, Ink.Text, Strong: true), TextAnchor.Centre);
        var below = Math.Min(column.Bottom, centre.Y + radius + 66);
        Letters.Draw(canvas, $"Rings: height above the low spot, {RingStep(rings, symbol)} apart", new(column.MidX, below - 18), note, TextAnchor.Centre);
        Letters.Draw(canvas, "Angles in the direction of rotation; circle not to scale.", new(column.MidX, below), note, TextAnchor.Centre);
    }

    private static void AddShaft(Plot plot, TurnedProfile profile, Func<double, double, Coordinates> at)
    {
        var shaft = plot.Add.Polygon(profile.Curve.Select(point => at(point.X, point.Y)).ToArray());
        shaft.FillColor = Ink.Plot(Ink.Shaft);
        shaft.LineWidth = 0;
    }

    private static void AddRings(Plot plot, AxisTicks rings, Func<double, double, Coordinates> at, HeightScale scale, double names)
    {
        foreach (var degrees in Enumerable.Range(0, 12).Select(i => 30.0 * i).Where(degrees => degrees != names))
        {
            var spoke = plot.Add.Line(at(degrees, 0), at(degrees, rings.Marks[^1].Value));
            spoke.LineStyle = new LineStyle(0.8f, Ink.Plot(Ink.Grid));
        }

        foreach (var (height, _) in rings.Marks)
        {
            var circle = plot.Add.Circle(0, 0, at(0, height).Y);
            circle.FillColor = Colors.Transparent;
            circle.LineStyle = new LineStyle(0.8f, Ink.Plot(height == 0 ? Ink.Frame : Ink.Ring));
        }

        if (scale.Limit is { OffScale: false } limit)
        {
            foreach (var edge in (ReadOnlySpan<double?>)[limit.Lower, limit.Upper])
            {
                if (edge is { } height)
                {
                    plot.Add.Plottable(new DashedLine([.. Enumerable.Range(0, 145).Select(i => at(2.5 * i, height))], Strokes.Limit));
                }
            }
        }
    }

    private static void AddSpot(Plot plot, Coordinates spot, MarkerStyle marker, Func<double, double, Coordinates> at)
    {
        plot.Add.Line(at(spot.X, 0), at(spot.X, spot.Y)).LineStyle = new LineStyle(1.2f, Ink.Plot(Ink.Text));
        plot.Add.Marker(at(spot.X, spot.Y)).MarkerStyle = marker;
    }

    private static void NameDirections(SKCanvas canvas, SKPoint centre, float radius, RunoutPictureContent content)
    {
        var style = new TextStyle(13, Ink.QuietText);
        Letters.Draw(canvas, $"0° {Wording.ShortZero(content.Result.Reference)}", new(centre.X, centre.Y - radius - 2), style with { Colour = Ink.Text, Strong = true }, TextAnchor.Centre);
        Letters.Draw(canvas, "90°", new(centre.X + radius, centre.Y + 4.5f), style);
        Letters.Draw(canvas, "180°", new(centre.X, centre.Y + radius + 10), style, TextAnchor.Centre);
        Letters.Draw(canvas, "270°", new(centre.X - radius, centre.Y + 4.5f), style, TextAnchor.Right);
    }

    // The heights stand one above another up or down the middle, unless a spot is there: then on the diagonal that is farthest from both.
    private static double NamesAt(TurnedProfile profile)
    {
        double Clear(double direction) => Math.Min(Apart(direction, profile.High.X), Apart(direction, profile.Low.X));
        var upright = Upright.MaxBy(Clear);
        return Clear(upright) > 25 ? upright : Diagonals.MaxBy(Clear);
    }

    private static void NameRings(SKCanvas canvas, Panel panel, AxisTicks rings, Func<double, double, Coordinates> at, double direction)
    {
        var style = new TextStyle(12, Ink.QuietText);
        var apart = panel.At(0, at(0, 0).Y).Y - panel.At(0, at(0, rings.Step).Y).Y;
        var every = apart * (direction % 90 == 0 ? 1 : 0.7) < 15 ? 2 : 1;   // where the rings are close, every second one
        foreach (var (height, text) in rings.Marks.Reverse().Where((_, i) => i % every == 0))
        {
            var place = at(direction, height);
            var point = panel.At(place.X, place.Y);
            Letters.Draw(canvas, text, new(point.X, point.Y + 4), style, TextAnchor.Centre, halo: true);
        }
    }

    private static void NameSpots(SKCanvas canvas, SKPoint centre, TurnedProfile profile)
    {
        using var paint = Paint.NewDisposablePaint();
        var style = new TextStyle(14, Ink.Text, Strong: true);
        var rows = new[]
        {
            (Text: $"high {Wording.Degrees(profile.High.X)}", Marker: Strokes.HighSpot, Down: -4f),
            (Text: $"low {Wording.Degrees(profile.Low.X)}", Marker: Strokes.LowSpot, Down: 15f),
        };
        var left = centre.X - (rows.Max(row => Letters.Width(row.Text, style)) + 15) / 2;
        foreach (var (text, marker, down) in rows)
        {
            marker.Render(canvas, new Pixel(left + 5, centre.Y + down - 5), paint);
            Letters.Draw(canvas, text, new(left + 15, centre.Y + down), style);
        }
    }

    private static string RingStep(AxisTicks rings, string symbol) =>
        rings.Marks.Count > 1 ? $"{rings.Marks[1].Text} {symbol}" : symbol;

    private static double Apart(double left, double right)
    {
        var apart = Math.Abs(left - right) % 360;
        return Math.Min(apart, 360 - apart);
    }
}
