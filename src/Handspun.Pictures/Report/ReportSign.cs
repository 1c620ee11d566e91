using Handspun.Pictures.Page;
using SkiaSharp;

namespace Handspun.Pictures.Report;

/// <summary>The sign beside a line of a report, told apart by its outline alone: a ring with a tick, a hexagon with a cross, a wedge with a question mark …</summary>
internal static class ReportSign
{
    private const float Box = 100;

    /// <summary>The colour that goes with it; it only repeats what the outline says.</summary>
    public static SKColor Colour(string code) => code switch
    {
        "within" => Ink.Within,
        "over" => Ink.Limit,
        "undecided" => Ink.Undecided,
        _ => Ink.QuietText,
    };

    /// <summary>Draws it in a square.</summary>
    public static void Draw(SKCanvas canvas, string code, float left, float top, float size)
    {
        canvas.Save();
        canvas.Translate(left, top);
        canvas.Scale(size / Box);
        var colour = Colour(code);
        switch (code)
        {
            case "within":
                Line(canvas, Ring(43), colour, 9);
                Line(canvas, "M29 52l15 16l28-36", colour, 11);
                break;
            case "over":
                Area(canvas, "M50 3l41 23.5v47L50 97L9 73.5v-47z", colour);
                Line(canvas, "M33 33l34 34M67 33L33 67", Ink.Paper, 12);
                break;
            case "undecided":
                Line(canvas, "M6 10h88L50 95z", colour, 8);
                Line(canvas, "M39 32c0-9 23-10 23 1c0 8-11 8-11 18", colour, 8);
                Area(canvas, Ring(5.5f, 51, 64), colour);
                break;
            case "seen":
                Area(canvas, "M50 12L88 50L50 88L12 50z", colour);
                break;
            default:
                Line(canvas, Ring(40), colour, 8);
                Line(canvas, "M34 50h32", colour, 9);
                break;
        }

        canvas.Restore();
    }

    private static string Ring(float radius, float x = 50, float y = 50) => FormattableString.Invariant($"M{x - radius} {y}a{radius} {radius} 0 1 0 {2 * radius} 0a{radius} {radius} 0 1 0 {-2 * radius} 0z");

    private static void Line(SKCanvas canvas, string path, SKColor colour, float width) => Draw(canvas, path, new() { Color = colour, IsStroke = true, StrokeWidth = width, IsAntialias = true });

    private static void Area(SKCanvas canvas, string path, SKColor colour) => Draw(canvas, path, new() { Color = colour, IsAntialias = true });

    private static void Draw(SKCanvas canvas, string path, SKPaint paint)
    {
        using (paint)
        using (var shape = SKPath.ParseSvgPathData(path))
        {
            canvas.DrawPath(shape, paint);
        }
    }
}
