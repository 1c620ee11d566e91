using System.Collections.Concurrent;
using SkiaSharp;

namespace Handspun.Pictures.Report;

/// <summary>Outlines of letters for the halo around them: straight between whole numbers. A document cannot stroke text; as it is, the outline of each letter would be written out, and a halo is too soft to show the difference.</summary>
internal static class HaloShapes
{
    private static readonly ConcurrentDictionary<string, SKPath> Known = new();

    /// <summary>The outline for a halo.</summary>
    /// <param name="outline">The letter's own, as a stored picture writes it: a thousand units are the height of the type.</param>
    /// <exception cref="FormatException">It is no outline.</exception>
    public static SKPath Of(string outline) => Known.GetOrAdd(outline, static text =>
    {
        using var whole = SKPath.ParseSvgPathData(text) ?? throw new FormatException("A path does not hold.");
        return Straight(whole);
    });

    private static SKPath Straight(SKPath outline)
    {
        using var iterator = outline.CreateRawIterator();
        var straight = new SKPath { FillType = outline.FillType };
        Span<SKPoint> points = stackalloc SKPoint[4];
        for (var verb = iterator.Next(points); verb != SKPathVerb.Done; verb = iterator.Next(points))
        {
            switch (verb)
            {
                case SKPathVerb.Move:
                    straight.MoveTo(Whole(points[0]));
                    break;
                case SKPathVerb.Line:
                    straight.LineTo(Whole(points[1]));
                    break;
                case SKPathVerb.Quad:
                    straight.LineTo(Whole(0.25f * points[0].X + 0.5f * points[1].X + 0.25f * points[2].X, 0.25f * points[0].Y + 0.5f * points[1].Y + 0.25f * points[2].Y));
                    straight.LineTo(Whole(points[2]));
                    break;
                case SKPathVerb.Cubic:
                    straight.LineTo(Whole(0.125f * (points[0].X + 3 * points[1].X + 3 * points[2].X + points[3].X), 0.125f * (points[0].Y + 3 * points[1].Y + 3 * points[2].Y + points[3].Y)));
                    straight.LineTo(Whole(points[3]));
                    break;
                case SKPathVerb.Close:
                    straight.Close();
                    break;
                default:
                    straight.LineTo(Whole(points[2]));   // a conic, which no font has
                    break;
            }
        }

        return straight;
    }

    private static SKPoint Whole(SKPoint at) => Whole(at.X, at.Y);

    private static SKPoint Whole(float x, float y) => new(MathF.Round(x), MathF.Round(y));
}
