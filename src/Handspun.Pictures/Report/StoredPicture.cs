using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml;
using System.Xml.Linq;
using Handspun.Pictures.Page;
using SkiaSharp;

namespace Handspun.Pictures.Report;

/// <summary>A picture that was written as SVG by this program, to be drawn again as lines and letters, in any size and as often as needed.</summary>
/// <remarks>Understands what <see cref="SvgPage"/> writes and nothing else.</remarks>
internal sealed partial class StoredPicture
{
    private readonly XElement _root;
    private readonly Dictionary<string, XElement> _named;

    private StoredPicture(XElement root, SKSize size)
    {
        _root = root;
        Size = size;
        _named = root.Descendants().Where(element => element.Attribute("id") is not null).ToDictionary(element => $"#{element.Attribute("id")!.Value}");
    }

    /// <summary>Its natural size.</summary>
    public SKSize Size { get; }

    /// <summary>Reads a picture.</summary>
    /// <returns>Null where it is none that this program wrote.</returns>
    public static StoredPicture? Read(byte[] svg)
    {
        try
        {
            using var stream = new MemoryStream(svg);
            var root = XDocument.Load(stream).Root!;
            var picture = new StoredPicture(root, new(Number(root, "width"), Number(root, "height")));
            using var nowhere = new SKNoDrawCanvas(1, 1);
            picture.Draw(nowhere);   // what cannot be drawn is found here and not in the middle of a page
            return picture.Size is { Width: > 0, Height: > 0 } ? picture : null;
        }
        catch (Exception e) when (e is XmlException or FormatException or ArgumentException or KeyNotFoundException)
        {
            return null;
        }
    }

    /// <summary>Draws it in its natural size.</summary>
    public void Draw(SKCanvas canvas) => Draw(canvas, _root, new Look(SKColors.Black, null, 1, SKStrokeCap.Butt, SKStrokeJoin.Miter));

    private void Draw(SKCanvas canvas, XElement element, Look inherited)
    {
        var look = inherited.With(element);
        switch (element.Name.LocalName)
        {
            case "svg":
                DrawAll(canvas, element, look);
                break;
            case "g":
                canvas.Save();
                Clip(canvas, element);
                Transform(canvas, element);
                DrawAll(canvas, element, look);
                canvas.Restore();
                break;
            case "path":
                using (var path = LightPath.Of(PathOf(element)))
                {
                    look.Paint(paint => canvas.DrawPath(path, paint));
                }

                break;
            case "rect":
                look.Paint(paint => canvas.DrawRect(RectOf(element), paint));
                break;
            case "ellipse":
                DrawEllipse(canvas, element, look);
                break;
            case "title" or "desc" or "defs" or "clipPath" or "use":
                break;
            default:
                throw new FormatException($"A picture of this program has no '{element.Name.LocalName}'.");
        }
    }

    private void DrawAll(SKCanvas canvas, XElement parent, Look look)
    {
        foreach (var child in parent.Elements())
        {
            Draw(canvas, child, look);
        }

        DrawLetters(canvas, [.. parent.Elements().Where(child => child.Name.LocalName == "use")], look);
    }

    // A dot is a round end of a line without length: four curves in a document otherwise, and a picture has a thousand of them.
    private static void DrawEllipse(SKCanvas canvas, XElement element, Look look)
    {
        var (x, y, width, height) = (LightPath.Snap(Number(element, "cx")), LightPath.Snap(Number(element, "cy")), Number(element, "rx"), Number(element, "ry"));
        if (look is { Stroke: null, Fill: { } fill } && Math.Abs(width - height) < 0.01f)
        {
            using var dot = new SKPaint { Color = fill, IsAntialias = true, IsStroke = true, StrokeWidth = 2 * width, StrokeCap = SKStrokeCap.Round };
            canvas.DrawPoint(x, y, dot);
            return;
        }

        const float Control = 0.5523f;   // where the handles of a cubic curve lie for a quarter of a circle
        var (across, down) = (width * Control, height * Control);
        using var oval = new SKPath();
        oval.MoveTo(x + width, y);
        oval.CubicTo(x + width, y + down, x + across, y + height, x, y + height);
        oval.CubicTo(x - across, y + height, x - width, y + down, x - width, y);
        oval.CubicTo(x - width, y - down, x - across, y - height, x, y - height);
        oval.CubicTo(x + across, y - height, x + width, y - down, x + width, y);
        oval.Close();
        look.Paint(paint => canvas.DrawPath(oval, paint));
    }

    private void DrawLetters(SKCanvas canvas, List<XElement> letters, Look look)
    {
        var known = letters.Select(letter => (X: Number(letter, "x"), Path: _named[letter.Attribute("href")!.Value]))
            .Select(letter => (letter.X, letter.Path, Shape: LetterShapes.Find(letter.Path.Attribute("d")!.Value))).ToList();
        foreach (var run in known.Where(letter => letter.Shape is not null).GroupBy(letter => letter.Shape!.Value.Typeface))
        {
            using var font = new SKFont(run.Key, 1000) { Subpixel = true, Hinting = SKFontHinting.None, LinearMetrics = true };
            using var builder = new SKTextBlobBuilder();
            builder.AddHorizontalRun([.. run.Select(letter => letter.Shape!.Value.Glyph)], font, [.. run.Select(letter => letter.X)], 0);
            using var blob = builder.Build();
            look.Paint(paint =>
            {
                if (paint.IsStroke)
                {
                    DrawHalo(canvas, run.Select(letter => (letter.X, letter.Path)), paint);
                }
                else
                {
                    canvas.DrawText(blob, 0, 0, paint);
                }
            });
        }

        foreach (var (x, element, _) in known.Where(letter => letter.Shape is null))
        {
            using var path = PathOf(element);
            path.Offset(x, 0);
            look.Paint(paint => canvas.DrawPath(path, paint));
        }
    }

    // Each letter in a place of its own, so that the same letter is the same bytes and packs well.
    private static void DrawHalo(SKCanvas canvas, IEnumerable<(float X, XElement Path)> letters, SKPaint paint)
    {
        foreach (var (x, path) in letters)
        {
            canvas.Save();
            canvas.Translate(x, 0);
            canvas.DrawPath(HaloShapes.Of(path.Attribute("d")!.Value), paint);
            canvas.Restore();
        }
    }

    private void Clip(SKCanvas canvas, XElement element)
    {
        if (element.Attribute("clip-path")?.Value is { } reference)
        {
            var shape = _named[reference[4..^1]].Elements().First();
            using var path = shape.Name.LocalName == "path" ? PathOf(shape) : new SKPath();
            if (shape.Name.LocalName == "rect")
            {
                path.AddRect(RectOf(shape));
            }

            canvas.ClipPath(path);
        }
    }

    private static void Transform(SKCanvas canvas, XElement element)
    {
        foreach (Match step in Steps().Matches(element.Attribute("transform")?.Value ?? ""))
        {
            var of = step.Groups["of"].Value.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries).Select(Parse).ToArray();
            var matrix = step.Groups["name"].Value switch
            {
                "translate" => SKMatrix.CreateTranslation(of[0], of.ElementAtOrDefault(1)),
                "scale" => SKMatrix.CreateScale(of[0], of.Length > 1 ? of[1] : of[0]),
                "rotate" => SKMatrix.CreateRotationDegrees(of[0]),
                "matrix" when of.Length == 6 => new SKMatrix(of[0], of[2], of[4], of[1], of[3], of[5], 0, 0, 1),
                var other => throw new FormatException($"A picture of this program has no '{other}'."),
            };
            canvas.Concat(matrix);
        }
    }

    private static SKPath PathOf(XElement element) => SKPath.ParseSvgPathData(element.Attribute("d")?.Value ?? "") ?? throw new FormatException("A path does not hold.");

    private static SKRect RectOf(XElement element) => SKRect.Create(Number(element, "x"), Number(element, "y"), Number(element, "width"), Number(element, "height"));

    private static float Number(XElement element, string name) => element.Attribute(name)?.Value is { } text ? Parse(text) : 0;

    private static float Parse(string text) => float.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"(?<name>[a-z]+)\((?<of>[^)]*)\)")]
    private static partial Regex Steps();

    /// <summary>Colours and strokes, which what is inside takes over from what it is in.</summary>
    private readonly record struct Look(SKColor? Fill, SKColor? Stroke, float Width, SKStrokeCap Cap, SKStrokeJoin Join)
    {
        public Look With(XElement element) => new(
            Colour(element, "fill", Fill),
            Colour(element, "stroke", Stroke),
            element.Attribute("stroke-width") is null ? Width : Number(element, "stroke-width"),
            element.Attribute("stroke-linecap")?.Value switch { "round" => SKStrokeCap.Round, "square" => SKStrokeCap.Square, null => Cap, _ => SKStrokeCap.Butt },
            element.Attribute("stroke-linejoin")?.Value switch { "round" => SKStrokeJoin.Round, "bevel" => SKStrokeJoin.Bevel, null => Join, _ => SKStrokeJoin.Miter });

        public void Paint(Action<SKPaint> draw)
        {
            using var paint = new SKPaint { IsAntialias = true, StrokeWidth = Width, StrokeCap = Cap, StrokeJoin = Join, StrokeMiter = 4 };
            if (Fill is { } fill)
            {
                paint.Color = fill;
                draw(paint);
            }

            if (Stroke is { } stroke)
            {
                paint.Color = stroke;
                paint.IsStroke = true;
                draw(paint);
            }
        }

        private static SKColor? Colour(XElement element, string name, SKColor? inherited)
        {
            var colour = element.Attribute(name)?.Value switch
            {
                null => inherited,
                "none" => null,
                "white" => SKColors.White,
                "black" => SKColors.Black,
                var code => SKColor.TryParse(code, out var parsed) ? parsed : throw new FormatException($"'{code}' is no colour."),
            };
            var part = element.Attribute($"{name}-opacity") is null ? 1 : Number(element, $"{name}-opacity");
            return part < 1 ? colour?.WithAlpha((byte)MathF.Round(255 * part)) : colour;
        }
    }
}
