using SkiaSharp;

namespace Handspun.Pictures.Report;

/// <summary>Makes a drawn line light enough for a document of many pages: what lies nearer to it than ink can show goes.</summary>
internal static class LightPath
{
    private const float Tolerance = 0.08f;   // of a picture's units, about half a point each on paper
    private const float Step = 8;   // eighths are written with few digits

    /// <summary>The same line with fewer points; a path with curves is given back as it is.</summary>
    public static SKPath Of(SKPath path)
    {
        using var iterator = path.CreateRawIterator();
        var light = new SKPath { FillType = path.FillType };
        var line = new List<SKPoint>();
        Span<SKPoint> points = stackalloc SKPoint[4];
        for (var verb = iterator.Next(points); verb != SKPathVerb.Done; verb = iterator.Next(points))
        {
            switch (verb)
            {
                case SKPathVerb.Move:
                    Add(light, line, closed: false);
                    line = [points[0]];
                    break;
                case SKPathVerb.Line:
                    line.Add(points[1]);
                    break;
                case SKPathVerb.Close:
                    Add(light, line, closed: true);
                    line = [];
                    break;
                default:
                    light.Dispose();
                    return path;
            }
        }

        Add(light, line, closed: false);
        path.Dispose();
        return light;
    }

    /// <summary>A place on the grid.</summary>
    public static float Snap(float at) => MathF.Round(at * Step) / Step;

    private static void Add(SKPath light, List<SKPoint> line, bool closed)
    {
        if (line.Count == 0)
        {
            return;
        }

        var kept = new bool[line.Count];
        (kept[0], kept[^1]) = (true, true);
        Keep(line, kept, 0, line.Count - 1);
        light.AddPoly([.. line.Where((_, i) => kept[i]).Select(point => new SKPoint(Snap(point.X), Snap(point.Y)))], closed);
    }

    // Ramer, Douglas and Peucker: of each stretch, the point that is farthest from its chord stays where it is too far.
    private static void Keep(List<SKPoint> line, bool[] kept, int from, int to)
    {
        var stretches = new Stack<(int From, int To)>([(from, to)]);
        while (stretches.TryPop(out var stretch))
        {
            var (farthest, distance) = (-1, Tolerance);
            for (var i = stretch.From + 1; i < stretch.To; i++)
            {
                var apart = Apart(line[i], line[stretch.From], line[stretch.To]);
                if (apart > distance)
                {
                    (farthest, distance) = (i, apart);
                }
            }

            if (farthest > 0)
            {
                kept[farthest] = true;
                stretches.Push((stretch.From, farthest));
                stretches.Push((farthest, stretch.To));
            }
        }
    }

    private static float Apart(SKPoint point, SKPoint a, SKPoint b)
    {
        var (along, to) = (b - a, point - a);
        var square = along.X * along.X + along.Y * along.Y;
        var part = square == 0 ? 0 : Math.Clamp((to.X * along.X + to.Y * along.Y) / square, 0, 1);
        return SKPoint.Distance(point, new(a.X + part * along.X, a.Y + part * along.Y));
    }
}
