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
        GiveOwnNames(root);

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

    // The writer counts the names of its clips through the life of the process. Numbered within the picture and led by what the picture is,
    // they are the same each time it is written, and two pictures put into one page do not take each other's.
    private static void GiveOwnNames(XElement root)
    {
        var numbers = new Dictionary<string, string>();
        foreach (var id in root.Descendants().Attributes("id"))
        {
            numbers.TryAdd(id.Value, string.Create(CultureInfo.InvariantCulture, $"n{numbers.Count}"));
        }

        Rename(root, name => numbers.GetValueOrDefault(name, name));
        var content = Encoding.UTF8.GetBytes(root.ToString(SaveOptions.DisableFormatting));
        var mark = Convert.ToHexStringLower(SHA256.HashData(content))[..8];
        Rename(root, name => $"p{mark}-{name}");   // a name may not begin with a digit
    }

    private static void Rename(XElement root, Func<string, string> rename)
    {
        foreach (var attribute in root.Descendants().Attributes())
        {
            if (attribute.Name.LocalName == "id")
            {
                attribute.Value = rename(attribute.Value);
            }
            else if (attribute.Value.StartsWith("url(#", StringComparison.Ordinal))
            {
                attribute.Value = $"url(#{rename(attribute.Value[5..^1])})";
            }
            else if (attribute.Name.LocalName == "href" && attribute.Value.StartsWith('#'))
            {
                attribute.Value = $"#{rename(attribute.Value[1..])}";
            }
        }
    }
}
