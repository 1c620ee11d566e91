using SkiaSharp;

namespace Handspun.Pictures.Tests.Runout;

/// <summary>Looks at a drawn picture.</summary>
internal static class Pixels
{
    /// <summary>Decodes a PNG.</summary>
    public static SKBitmap Of(byte[] png)
    {
        Assert.Equal<byte>([0x89, (byte)'P', (byte)'N', (byte)'G', 13, 10, 26, 10], png[..8]);   // the signature, ISO/IEC 15948 5.2
        return SKBitmap.Decode(png);
    }

    /// <summary>How many pixels of an area are darker than a pale grey.</summary>
    public static int Inked(SKBitmap picture, SKRectI area) => Count(picture, area, pixel => pixel.Red + pixel.Green + pixel.Blue < 480);

    /// <summary>How many pixels of an area are of a kind.</summary>
    public static int Count(SKBitmap picture, SKRectI area, Func<SKColor, bool> kind)
    {
        var count = 0;
        for (var y = area.Top; y < area.Bottom; y++)
        {
            for (var x = area.Left; x < area.Right; x++)
            {
                count += kind(picture.GetPixel(x, y)) ? 1 : 0;
            }
        }

        return count;
    }

    /// <summary>The middle of all pixels of a kind.</summary>
    public static (double X, double Y) Middle(SKBitmap picture, Func<SKColor, bool> kind)
    {
        var places = Enumerable.Range(0, picture.Width * picture.Height).Select(i => (X: i % picture.Width, Y: i / picture.Width)).Where(at => kind(picture.GetPixel(at.X, at.Y))).ToList();
        return (places.Average(at => at.X), places.Average(at => at.Y));
    }

    /// <summary>The whole picture.</summary>
    public static SKRectI All(SKBitmap picture) => new(0, 0, picture.Width, picture.Height);

    /// <summary>A colour, or so close to it that only the encoder knows.</summary>
    public static Func<SKColor, bool> Near(SKColor colour) => pixel =>
        Math.Abs(pixel.Red - colour.Red) + Math.Abs(pixel.Green - colour.Green) + Math.Abs(pixel.Blue - colour.Blue) < 9;
}
