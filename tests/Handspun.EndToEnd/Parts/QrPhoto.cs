using Microsoft.Playwright;
using ZXing;
using ZXing.Common;
using ZXing.QrCode;

namespace Handspun.EndToEnd.Parts;

/// <summary>What a camera sees of a QR code on a page, read by a decoder that had no part in making it.</summary>
internal static class QrPhoto
{
    /// <summary>The text of the code; null where none is seen.</summary>
    public static async Task<string?> ReadAsync(ILocator place)
    {
        var shot = Convert.ToBase64String(await place.ScreenshotAsync());
        var pixels = await place.Page.EvaluateAsync<int[]>(
            """
            async data => {
              const image = new Image();
              image.src = 'data:image/png;base64,' + data;
              await image.decode();
              const canvas = Object.assign(document.createElement('canvas'), { width: image.width, height: image.height });
              const context = canvas.getContext('2d');
              context.drawImage(image, 0, 0);
              const rgba = context.getImageData(0, 0, image.width, image.height).data;
              return [image.width, image.height, ...Array.from({ length: rgba.length / 4 }, (_, i) => rgba[4 * i + 1])];
            }
            """,
            shot);
        var grey = new RGBLuminanceSource([.. pixels.Skip(2).Select(value => (byte)value)], pixels[0], pixels[1], RGBLuminanceSource.BitmapFormat.Gray8);
        return new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(grey)))?.Text;
    }
}
