using SkiaSharp;

namespace Handspun.Pictures.Photos;

/// <summary>Looks into the bytes of a photo. What it is called or said to be does not count; only what is in it does.</summary>
public static class PhotoReader
{
    /// <summary>The most bytes that a photo may have.</summary>
    public const int MostBytes = 25 * 1024 * 1024;

    private const long MostPixels = 120_000_000;   // beyond any camera in a shop; a small file can claim far more than memory holds
    private const int SmallSide = 1280;
    private const int SmallQuality = 82;

    private static ReadOnlySpan<byte> JpegStart => [0xFF, 0xD8, 0xFF];

    private static ReadOnlySpan<byte> PngStart => [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A];

    /// <summary>Reads a photo to its end.</summary>
    public static PhotoAnswer Read(byte[] bytes)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        if (bytes.Length > MostBytes)
        {
            return new(null, $"it has {bytes.Length / 1024 / 1024} MB, and {MostBytes / 1024 / 1024} MB are the most: take it with fewer pixels.");
        }

        PhotoFormat? format = bytes.AsSpan().StartsWith(JpegStart) ? PhotoFormat.Jpeg : bytes.AsSpan().StartsWith(PngStart) ? PhotoFormat.Png : null;
        if (format is null)
        {
            return new(null, "it is no JPEG or PNG picture: set the phone to its most compatible format, or send a screenshot.");
        }

        using var data = SKData.CreateCopy(bytes);
        using var codec = SKCodec.Create(data);
        if (codec is null)
        {
            return CutOff;
        }

        if ((long)codec.Info.Width * codec.Info.Height > MostPixels)
        {
            return new(null, $"it has {codec.Info.Width} × {codec.Info.Height} pixels, more than any camera: take it again with fewer.");
        }

        using var turned = Decode(codec);
        if (turned is null)
        {
            return CutOff;
        }

        var isOnItsSide = IsOnItsSide(codec.EncodedOrigin);
        using var image = SKImage.FromBitmap(turned);
        using var small = image.Encode(SKEncodedImageFormat.Jpeg, SmallQuality);
        return new(new Photo(format.Value, isOnItsSide ? codec.Info.Height : codec.Info.Width, isOnItsSide ? codec.Info.Width : codec.Info.Height, small.ToArray()), null);
    }

    private static PhotoAnswer CutOff => new(null, "it begins like a picture but cannot be read to its end: it was cut off on the way. Send it again.");

    // Small, turned as it is to be seen, on white; null where the bytes end too soon.
    private static SKBitmap? Decode(SKCodec codec)
    {
        var size = codec.GetScaledDimensions(Math.Min(1f, (float)SmallSide / Math.Max(codec.Info.Width, codec.Info.Height)));
        using var read = new SKBitmap(new SKImageInfo(size.Width, size.Height, SKColorType.Rgba8888, SKAlphaType.Premul));
        if (codec.GetPixels(read.Info, read.GetPixels()) != SKCodecResult.Success)
        {
            return null;
        }

        var shrink = Math.Min(1f, (float)SmallSide / Math.Max(size.Width, size.Height));
        var (width, height) = (Math.Max(1, (int)MathF.Round(size.Width * shrink)), Math.Max(1, (int)MathF.Round(size.Height * shrink)));
        var isOnItsSide = IsOnItsSide(codec.EncodedOrigin);
        var turned = new SKBitmap(new SKImageInfo(isOnItsSide ? height : width, isOnItsSide ? width : height, SKColorType.Rgba8888, SKAlphaType.Opaque));
        using var canvas = new SKCanvas(turned);
        canvas.Clear(SKColors.White);
        canvas.SetMatrix(Turn(codec.EncodedOrigin, width, height));
        using var image = SKImage.FromBitmap(read);
        canvas.DrawImage(image, new SKRect(0, 0, width, height), new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear));
        return turned;
    }

    private static bool IsOnItsSide(SKEncodedOrigin origin) => origin is SKEncodedOrigin.LeftTop or SKEncodedOrigin.RightTop or SKEncodedOrigin.RightBottom or SKEncodedOrigin.LeftBottom;

    // Where the first row and column are to be seen: the tag Orientation of TIFF 6.0, which EXIF takes over.
    private static SKMatrix Turn(SKEncodedOrigin origin, int width, int height) => origin switch
    {
        SKEncodedOrigin.TopRight => new(-1, 0, width, 0, 1, 0, 0, 0, 1),
        SKEncodedOrigin.BottomRight => new(-1, 0, width, 0, -1, height, 0, 0, 1),
        SKEncodedOrigin.BottomLeft => new(1, 0, 0, 0, -1, height, 0, 0, 1),
        SKEncodedOrigin.LeftTop => new(0, 1, 0, 1, 0, 0, 0, 0, 1),
        SKEncodedOrigin.RightTop => new(0, -1, height, 1, 0, 0, 0, 0, 1),
        SKEncodedOrigin.RightBottom => new(0, -1, height, -1, 0, width, 0, 0, 1),
        SKEncodedOrigin.LeftBottom => new(0, 1, 0, -1, 0, width, 0, 0, 1),
        _ => SKMatrix.Identity,
    };
}
