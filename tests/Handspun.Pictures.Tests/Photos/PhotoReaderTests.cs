using System.Buffers.Binary;
using Handspun.Pictures.Photos;
using SkiaSharp;

namespace Handspun.Pictures.Tests.Photos;

public sealed class PhotoReaderTests
{
    [Theory]
    [InlineData(SKEncodedImageFormat.Jpeg, PhotoFormat.Jpeg)]
    [InlineData(SKEncodedImageFormat.Png, PhotoFormat.Png)]
    public void Photo_IsReadWithItsSize_AndGetsASmallOne(SKEncodedImageFormat written, PhotoFormat format)
    {
        var photo = PhotoReader.Read(Picture(2600, 1300, written)).Photo!;

        Assert.Equal((format, 2600, 1300), (photo.Format, photo.Width, photo.Height));
        using var small = SKBitmap.Decode(photo.Small);
        Assert.Equal((1280, 640), (small.Width, small.Height));
        Assert.True(IsRed(small.GetPixel(20, 20)), "the top left corner is red");
        Assert.False(IsRed(small.GetPixel(1260, 620)), "the bottom right corner is not");
    }

    // The tag Orientation (274) of TIFF 6.0, page 36: where the first row and the first column are to be seen.
    [Theory]
    [InlineData(1, false, false, false)]
    [InlineData(2, false, true, false)]
    [InlineData(3, false, true, true)]
    [InlineData(4, false, false, true)]
    [InlineData(5, true, false, false)]
    [InlineData(6, true, true, false)]
    [InlineData(7, true, true, true)]
    [InlineData(8, true, false, true)]
    public void Photo_IsTurnedAsTheCameraWasHeld(ushort orientation, bool isOnItsSide, bool firstPixelIsRight, bool firstPixelIsLow)
    {
        var photo = PhotoReader.Read(WithOrientation(Picture(400, 200, SKEncodedImageFormat.Jpeg), orientation)).Photo!;

        Assert.Equal(isOnItsSide ? (200, 400) : (400, 200), (photo.Width, photo.Height));
        using var small = SKBitmap.Decode(photo.Small);
        Assert.Equal((photo.Width, photo.Height), (small.Width, small.Height));
        foreach (var (right, low) in new[] { (false, false), (true, false), (false, true), (true, true) })
        {
            var corner = small.GetPixel(right ? small.Width - 10 : 10, low ? small.Height - 10 : 10);
            Assert.Equal((right, low) == (firstPixelIsRight, firstPixelIsLow), IsRed(corner));
        }
    }

    [Theory]
    [InlineData("GIF89a and more")]
    [InlineData("<svg xmlns=\"http://www.w3.org/2000/svg\"/>")]
    [InlineData("%PDF-1.7")]
    [InlineData("")]
    public void Bytes_OfSomethingElse_AreNoPhoto(string text) =>
        Assert.Contains("it is no JPEG or PNG picture", PhotoReader.Read(System.Text.Encoding.ASCII.GetBytes(text)).Problem, StringComparison.Ordinal);

    [Theory]
    [InlineData(SKEncodedImageFormat.Jpeg)]
    [InlineData(SKEncodedImageFormat.Png)]
    public void Photo_CutOffAnywhere_IsTold_AndNeverThrows(SKEncodedImageFormat written)
    {
        var whole = Picture(300, 200, written);
        for (var length = 0; length < whole.Length - 40; length += Math.Max(1, whole.Length / 60))
        {
            Assert.NotNull(PhotoReader.Read(whole[..length]).Problem);
        }
    }

    [Fact]
    public void Photo_ThatIsTooLarge_IsToldItsSize()
    {
        Assert.Contains("26 MB, and 25 MB are the most", PhotoReader.Read(new byte[26 * 1024 * 1024]).Problem, StringComparison.Ordinal);
    }

    // ISO/IEC 15948, 11.2.2: width and height stand in the header, whatever follows.
    [Fact]
    public void Photo_ThatClaimsMorePixelsThanMemoryHolds_IsNotDecoded()
    {
        var png = Picture(2, 2, SKEncodedImageFormat.Png);
        BinaryPrimitives.WriteInt32BigEndian(png.AsSpan(16), 100_000);
        BinaryPrimitives.WriteInt32BigEndian(png.AsSpan(20), 100_000);
        BinaryPrimitives.WriteUInt32BigEndian(png.AsSpan(29), Crc(png.AsSpan(12, 17)));

        Assert.Contains("100000 × 100000 pixels", PhotoReader.Read(png).Problem, StringComparison.Ordinal);
    }

    // Red where the first pixel is, blue elsewhere.
    private static byte[] Picture(int width, int height, SKEncodedImageFormat format)
    {
        using var bitmap = new SKBitmap(width, height);
        using var canvas = new SKCanvas(bitmap);
        using var red = new SKPaint { Color = SKColors.Red };
        canvas.Clear(SKColors.Blue);
        canvas.DrawRect(0, 0, width / 2f, height / 2f, red);
        using var image = SKImage.FromBitmap(bitmap);
        return image.Encode(format, 90).ToArray();
    }

    // An APP1 segment right after the start of image: "Exif", then a TIFF header, one directory, one entry (CIPA DC-008, 4.5.4, 4.7.2).
    private static byte[] WithOrientation(byte[] jpeg, ushort orientation)
    {
        byte[] exif =
        [
            0xFF, 0xE1, 0, 34, (byte)'E', (byte)'x', (byte)'i', (byte)'f', 0, 0,
            (byte)'M', (byte)'M', 0, 42, 0, 0, 0, 8,
            0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, (byte)orientation, 0, 0, 0, 0, 0, 0,
        ];
        return [.. jpeg[..2], .. exif, .. jpeg[2..]];
    }

    // ISO/IEC 15948, annex D.
    private static uint Crc(ReadOnlySpan<byte> bytes)
    {
        var crc = uint.MaxValue;
        foreach (var value in bytes)
        {
            crc ^= value;
            for (var bit = 0; bit < 8; bit++)
            {
                crc = (crc & 1) == 1 ? 0xEDB88320 ^ (crc >> 1) : crc >> 1;
            }
        }

        return ~crc;
    }

    private static bool IsRed(SKColor color) => color.Red > 180 && color.Blue < 80;
}
