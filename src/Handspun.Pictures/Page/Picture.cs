using SkiaSharp;

namespace Handspun.Pictures.Page;

/// <summary>A finished picture that can be written as often as needed, in any size, from any thread.</summary>
public sealed class Picture
{
    private readonly Action<SKCanvas, SKSize> _draw;

    /// <param name="natural">The size it was laid out for; larger pages give the room to the plots.</param>
    /// <param name="title">What it shows, for those who cannot see it.</param>
    /// <param name="description">What it says, for those who cannot see it.</param>
    /// <param name="draw">Draws it on a page of at least the natural size.</param>
    internal Picture(SKSizeI natural, string title, string description, Action<SKCanvas, SKSize> draw)
    {
        Width = natural.Width;
        Height = natural.Height;
        Title = title;
        Description = description;
        _draw = draw;
    }

    /// <summary>Its natural width, in units of the SVG, or in pixels where one pixel a unit is enough.</summary>
    public int Width { get; }

    /// <summary>Its natural height, in the same units.</summary>
    public int Height { get; }

    /// <summary>What it shows, in a few words; good as an image's alternative text.</summary>
    public string Title { get; }

    /// <summary>What it says, in a sentence or two.</summary>
    public string Description { get; }

    /// <summary>The picture as an SVG document (UTF-8) of its natural size. Text is drawn as outlines and needs no font.</summary>
    public byte[] ToSvg() => SvgPage.Write(this, canvas => DrawOn(canvas, new SKSize(Width, Height)));

    /// <summary>The picture as a PNG image.</summary>
    /// <param name="width">Pixels across, 100 to 10,000.</param>
    /// <param name="height">Pixels down, 100 to 10,000.</param>
    /// <exception cref="ArgumentOutOfRangeException">The size is outside these bounds.</exception>
    public byte[] ToPng(int width, int height)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 100);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(width, 10_000);
        ArgumentOutOfRangeException.ThrowIfLessThan(height, 100);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(height, 10_000);

        using var surface = SKSurface.Create(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Premul))
            ?? throw new InvalidOperationException($"There is no memory for a picture of {width} by {height} pixels.");
        var scale = Math.Min((float)width / Width, (float)height / Height);
        surface.Canvas.Scale(scale);
        DrawOn(surface.Canvas, new SKSize(width / scale, height / scale));
        using var image = surface.Snapshot();
        using var data = image.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }

    private void DrawOn(SKCanvas canvas, SKSize page)
    {
        using var paper = new SKPaint { Color = Ink.Paper };
        canvas.DrawRect(0, 0, page.Width, page.Height, paper);
        _draw(canvas, page);
    }
}
