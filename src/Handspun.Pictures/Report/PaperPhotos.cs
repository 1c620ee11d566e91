using Handspun.Jobs.Book;
using SkiaSharp;

namespace Handspun.Pictures.Report;

/// <summary>The photos of a report as paper needs them: the more there are, the smaller each is drawn and the fewer bytes it may take, so that the document can be sent whatever was photographed.</summary>
internal sealed class PaperPhotos(IReportPictures pictures, int count)
{
    private const int ManyPhotos = 12;
    private const int MostBytes = 600_000;   // of all photos together
    private const float Finest = 180;   // dots an inch
    private const float Coarsest = 72;
    private const int Quality = 78;
    private const int QualityOfMany = 65;
    private const int Tries = 4;

    /// <summary>How many stand side by side.</summary>
    public int Across => count > ManyPhotos ? 4 : 3;

    /// <summary>How high one can be, in points.</summary>
    public float Highest => count > ManyPhotos ? 110 : 150;

    /// <summary>A photo no larger than it is drawn; null where it is gone or cannot be read.</summary>
    /// <param name="photo">Which.</param>
    /// <param name="width">How wide it can be, in points.</param>
    // A JPEG goes into the document as it is; decoded pixels would be many times as large.
    public SKImage? Read(PhotoAdded photo, float width)
    {
        var bytes = pictures.PhotoOf(photo);
        using var whole = bytes is null ? null : SKBitmap.Decode(bytes);
        if (whole is null)
        {
            return null;
        }

        using var image = SKImage.FromBitmap(whole);
        var share = MostBytes / Math.Max(1, count);
        var (dots, quality) = (Finest, Quality);
        for (var tried = 1; ; tried++)
        {
            var data = Shrink(image, width, dots, quality);
            if (data.Size <= share || dots <= Coarsest || tried == Tries)
            {
                using (data)
                {
                    return SKImage.FromEncodedData(data);
                }
            }

            // Half as many dots each way are about a quarter of the bytes.
            dots = Math.Max(Coarsest, 0.95f * dots * MathF.Sqrt((float)share / data.Size));
            quality = QualityOfMany;
            data.Dispose();
        }
    }

    private SKData Shrink(SKImage whole, float width, float dots, int quality)
    {
        var scale = Math.Min(1, Math.Min(width / 72 * dots / whole.Width, Highest / 72 * dots / whole.Height));
        var info = new SKImageInfo(Math.Max(1, (int)(whole.Width * scale)), Math.Max(1, (int)(whole.Height * scale)), SKColorType.Rgba8888, SKAlphaType.Opaque);
        using var small = new SKBitmap(info);
        using (var canvas = new SKCanvas(small))
        {
            canvas.Clear(SKColors.White);
            canvas.DrawImage(whole, SKRect.Create(info.Width, info.Height), new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear));
        }

        using var shrunk = SKImage.FromBitmap(small);
        return shrunk.Encode(SKEncodedImageFormat.Jpeg, quality);
    }
}
