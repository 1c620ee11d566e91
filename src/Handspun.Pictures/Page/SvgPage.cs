using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Xml;
using System.Xml.Linq;
using SkiaSharp;

namespace Handspun.Pictures.Page;

/// <summary>Writes a drawing as an SVG document.</summary>
internal static class SvgPage
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static byte[] Write(Picture picture, Action<SKCanvas> draw)
    {
        using var drawn = new MemoryStream();
        using (var canvas = SKSvgCanvas.Create(new SKRect(0, 0, picture.Width, picture.Height), drawn))
        {
            draw(canvas);
        }

        drawn.Position = 0;
        var document = XDocument.Load(drawn);
        var root = document.Root!;
        OutlinedText.Put(root);
        OwnNames(root, Convert.ToHexStringLower(SHA256.HashData(drawn.GetBuffer().AsSpan(0, (int)drawn.Length)))[..8]);

        // The box lets a page scale it; the title and description are what a screen reader says.
        root.SetAttributeValue("viewBox", string.Create(CultureInfo.InvariantCulture, $"0 0 {picture.Width} {picture.Height}"));
        root.SetAttributeValue("role", "img");
        root.AddFirst(new XElement(Svg + "title", picture.Title), new XElement(Svg + "desc", picture.Description));

        using var written = new MemoryStream();
        using (var writer = XmlWriter.Create(written, new XmlWriterSettings { Encoding = new UTF8Encoding(false), Indent = false }))
        {
            document.Save(writer);
        }

        return written.ToArray();
    }

    // Names of clips count from one in every document; two pictures put into one page would take each other's.
    private static void OwnNames(XElement root, string prefix)
    {
        foreach (var attribute in root.Descendants().Attributes())
        {
            if (attribute.Name.LocalName == "id")
            {
                attribute.Value = $"{prefix}-{attribute.Value}";
            }
            else if (attribute.Value.StartsWith("url(#", StringComparison.Ordinal))
            {
                attribute.Value = $"url(#{prefix}-{attribute.Value[5..]}";
            }
            else if (attribute.Name.LocalName == "href" && attribute.Value.StartsWith('#'))
            {
                attribute.Value = $"#{prefix}-{attribute.Value[1..]}";
            }
        }
    }
}
