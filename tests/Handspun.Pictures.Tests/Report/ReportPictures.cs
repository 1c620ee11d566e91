using Handspun.Jobs.Book;
using Handspun.Pictures.Report;
using Handspun.Pictures.Runout;
using Handspun.Pictures.Tests.Runout;
using SkiaSharp;

namespace Handspun.Pictures.Tests.Report;

/// <summary>Invented pictures for a report: each record's a drawn runout, each photo a field of noise, which compresses worse than any photo.</summary>
internal sealed class ReportPictures : IReportPictures
{
    private readonly byte[] _photo = Noise();

    public byte[]? PictureOf(string record) => RunoutPicture.Draw(new InventedRecord { Title = $"Record {record}" }.Content()).ToSvg();

    public byte[]? PhotoOf(PhotoAdded photo) => _photo;

    private static byte[] Noise()
    {
        using var bitmap = new SKBitmap(1280, 960);
        var chance = new Random(4);
        for (var y = 0; y < bitmap.Height; y += 4)
        {
            for (var x = 0; x < bitmap.Width; x += 4)
            {
                var grey = (byte)(x / 8 + chance.Next(60));
                bitmap.Erase(new SKColor(grey, (byte)(grey / 2 + y / 16), 90), new SKRectI(x, y, x + 4, y + 4));
            }
        }

        using var image = SKImage.FromBitmap(bitmap);
        using var data = image.Encode(SKEncodedImageFormat.Jpeg, 85);
        return data.ToArray();
    }
}
