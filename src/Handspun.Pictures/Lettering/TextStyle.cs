using SkiaSharp;

namespace Handspun.Pictures.Lettering;

/// <summary>How a piece of text looks.</summary>
/// <param name="Size">Height of the letters' body, in units of the picture.</param>
/// <param name="Colour">Colour of the letters.</param>
/// <param name="Strong">Whether it stands out.</param>
internal readonly record struct TextStyle(float Size, SKColor Colour, bool Strong = false)
{
    /// <summary>The font to draw it with. The caller disposes of it.</summary>
    public SKFont Font() => new(Strong ? Typefaces.Strong : Typefaces.Regular, Size)
    {
        Subpixel = true,
        Hinting = SKFontHinting.None,   // outlines do not depend on the scale of the canvas
        LinearMetrics = true,
    };
}

/// <summary>Which side of a text lies at its point.</summary>
internal enum TextAnchor
{
    /// <summary>The text runs to the right of the point.</summary>
    Left,

    /// <summary>The point is in the middle.</summary>
    Centre,

    /// <summary>The text ends at the point.</summary>
    Right,
}
