using Handspun.Jobs.Reports;
using SkiaSharp;

namespace Handspun.Pictures.Report;

/// <summary>Photos side by side with their captions, made as small as paper needs.</summary>
internal static class PhotoRow
{
    private const int Across = 3;
    private const float Between = 10;
    private const float Highest = 150;
    private const int DotsPerInch = 180;
    private const int Quality = 78;

    public static void Put(Sheets sheets, IReadOnlyList<ReportedPhoto> photos, IReportPictures pictures)
    {
        var width = (sheets.Width - Between * (Across - 1)) / Across;
        foreach (var row in photos.Chunk(Across))
        {
            var laid = row.Select(photo => (Image: Read(pictures.PhotoOf(photo.Photo), width), Caption: Passage.Of(photo.Caption, width, Type.Label))).ToList();
            sheets.Put(laid.Max(photo => SizeOf(photo.Image, width).Height + photo.Caption.Height) + 10, (canvas, top) =>
            {
                for (var i = 0; i < laid.Count; i++)
                {
                    Draw(canvas, laid[i].Image, laid[i].Caption, sheets.Left + i * (width + Between), top + 3, width);
                }
            });
        }
    }

    private static void Draw(SKCanvas canvas, SKImage? image, Passage caption, float left, float top, float width)
    {
        var size = SizeOf(image, width);
        if (image is null)
        {
            Passage.DrawLine(canvas, "This photo is gone.", left, top + 12, Type.Label);
        }
        else
        {
            canvas.DrawImage(image, SKRect.Create(left, top, size.Width, size.Height), new SKSamplingOptions(SKFilterMode.Linear));
        }

        caption.Draw(canvas, left, top + size.Height + 3);
    }

    private static SKSize SizeOf(SKImage? image, float width)
    {
        if (image is null)
        {
            return new(width, 16);
        }

        var scale = Math.Min(width / image.Width, Highest / image.Height);
        return new(image.Width * scale, image.Height * scale);
    }

    // A JPEG goes into the document as it is; decoded pixels would be many times as large.
    private static SKImage? Read(byte[]? bytes, float width)
    {
        using var whole = bytes is null ? null : SKBitmap.Decode(bytes);
        if (whole is null)
        {
            return null;
        }

        var scale = Math.Min(1, Math.Min(width / 72 * DotsPerInch / whole.Width, Highest / 72 * DotsPerInch / whole.Height));
        var info = new SKImageInfo(Math.Max(1, (int)(whole.Width * scale)), Math.Max(1, (int)(whole.Height * scale)), SKColorType.Rgba8888, SKAlphaType.Opaque);
        using var small = new SKBitmap(info);
        using (var canvas = new SKCanvas(small))
        using (var image = SKImage.FromBitmap(whole))
        {
            canvas.Clear(SKColors.White);
            canvas.DrawImage(image, SKRect.Create(info.Width, info.Height), new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear));
        }

        using var shrunk = SKImage.FromBitmap(small);
        using var data = shrunk.Encode(SKEncodedImageFormat.Jpeg, Quality);
        return SKImage.FromEncodedData(data);
    }
}
