using SkiaSharp;

namespace Handspun.Pictures.Page;

/// <summary>The colours of every picture: dark on white, far enough apart in lightness to print in grey.</summary>
internal static class Ink
{
    public static readonly SKColor Paper = new(0xFF, 0xFF, 0xFF);
    public static readonly SKColor Text = new(0x1C, 0x26, 0x2E);
    public static readonly SKColor QuietText = new(0x4C, 0x59, 0x63);
    public static readonly SKColor Frame = new(0x8B, 0x97, 0xA0);
    public static readonly SKColor Grid = new(0xE2, 0xE6, 0xE9);
    public static readonly SKColor Ring = new(0xC3, 0xCB, 0xD1);
    public static readonly SKColor Readings = new(0x93, 0xA0, 0xAA);
    public static readonly SKColor Profile = new(0x0B, 0x3F, 0x5C);
    public static readonly SKColor Shaft = new(0xE9, 0xEF, 0xF2);
    public static readonly SKColor Limit = new(0x9C, 0x3B, 0x2E);
    public static readonly SKColor Allowed = new(0xF3, 0xF0, 0xE8);
    public static readonly SKColor LeftOut = new(0xB0, 0x4A, 0x2F);
    public static readonly SKColor Within = new(0x2B, 0x62, 0x3B);
    public static readonly SKColor Undecided = new(0x7A, 0x5A, 0x0C);

    /// <summary>The same colour for the plotting library.</summary>
    public static ScottPlot.Color Plot(SKColor colour) => ScottPlot.Color.FromSKColor(colour);
}
