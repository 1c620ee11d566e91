using Handspun.Metrology.Decision;
using Handspun.Pictures.Lettering;
using SkiaSharp;

namespace Handspun.Pictures.Page;

/// <summary>A verdict as a sign that can be told without its colour: a tick, a cross or a question mark in a disc.</summary>
internal static class VerdictSign
{
    public static SKColor Colour(Verdict? verdict) => verdict switch
    {
        Verdict.Within => Ink.Within,
        Verdict.Over => Ink.Limit,
        Verdict.Undecided => Ink.Undecided,
        _ => Ink.QuietText,
    };

    public static void Draw(SKCanvas canvas, SKPoint centre, float radius, Verdict verdict)
    {
        using var disc = new SKPaint { Color = Colour(verdict), IsAntialias = true };
        canvas.DrawCircle(centre, radius, disc);
        if (verdict == Verdict.Undecided)
        {
            Letters.Draw(canvas, "?", new(centre.X, centre.Y + radius * 0.55f), new(radius * 1.6f, Ink.Paper, Strong: true), TextAnchor.Centre);
            return;
        }

        using var stroke = new SKPaint
        {
            Color = Ink.Paper,
            IsStroke = true,
            StrokeWidth = radius * 0.28f,
            StrokeCap = SKStrokeCap.Round,
            StrokeJoin = SKStrokeJoin.Round,
            IsAntialias = true,
        };
        using var sign = new SKPath();
        ReadOnlySpan<SKPoint> points = verdict == Verdict.Within
            ? [new(-0.45f, 0.05f), new(-0.12f, 0.38f), new(0.45f, -0.32f)]
            : [new(-0.36f, -0.36f), new(0.36f, 0.36f), new(0.36f, -0.36f), new(-0.36f, 0.36f)];
        for (var i = 0; i < points.Length; i++)
        {
            var at = new SKPoint(centre.X + radius * points[i].X, centre.Y + radius * points[i].Y);
            if (i == 0 || (verdict == Verdict.Over && i == 2))
            {
                sign.MoveTo(at);
            }
            else
            {
                sign.LineTo(at);
            }
        }

        canvas.DrawPath(sign, stroke);
    }
}
