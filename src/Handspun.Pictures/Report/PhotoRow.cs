using Handspun.Jobs.Reports;
using SkiaSharp;

namespace Handspun.Pictures.Report;

/// <summary>Photos side by side with their captions.</summary>
internal static class PhotoRow
{
    private const float Between = 10;

    public static void Put(Sheets sheets, IReadOnlyList<ReportedPhoto> photos, PaperPhotos paper)
    {
        var width = (sheets.Width - Between * (paper.Across - 1)) / paper.Across;
        foreach (var row in photos.Chunk(paper.Across))
        {
            var laid = row.Select(photo => (Image: paper.Read(photo.Photo, width), Caption: Passage.Of(photo.Caption, width, Type.Label)))
                .Select(photo => (photo.Image, Size: SizeOf(photo.Image, width, paper.Highest), photo.Caption)).ToList();
            sheets.Put(laid.Max(photo => photo.Size.Height + photo.Caption.Height) + 10, (canvas, top) =>
            {
                for (var i = 0; i < laid.Count; i++)
                {
                    Draw(canvas, laid[i].Image, laid[i].Size, laid[i].Caption, sheets.Left + i * (width + Between), top + 3);
                }
            });
        }
    }

    private static void Draw(SKCanvas canvas, SKImage? image, SKSize size, Passage caption, float left, float top)
    {
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

    private static SKSize SizeOf(SKImage? image, float width, float highest)
    {
        if (image is null)
        {
            return new(width, 16);
        }

        var scale = Math.Min(width / image.Width, highest / image.Height);
        return new(image.Width * scale, image.Height * scale);
    }
}
