using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Handspun.Pictures.Lettering;

namespace Handspun.Pictures.Page;

/// <summary>Turns the text of an SVG document into outlines, each letter's kept once.</summary>
/// <remarks>
/// A page that shows an SVG as an image gives it no fonts, and text left as text would be set in whatever the reader's machine has,
/// at widths that this layout knows nothing of.
/// </remarks>
internal sealed partial class OutlinedText
{
    private const int BodySize = 1000;   // the font's own units, in which its outlines are whole numbers
    private static readonly string[] OfFonts = ["font-family", "font-size", "font-weight", "font-style", "x", "y", "transform"];
    private readonly XNamespace _svg;
    private readonly Dictionary<string, XElement> _letters = [];

    private OutlinedText(XNamespace svg) => _svg = svg;

    /// <summary>Replaces every text element of the document.</summary>
    public static void Put(XElement root)
    {
        var outlined = new OutlinedText(root.Name.Namespace);
        foreach (var text in root.Descendants(root.Name.Namespace + "text").ToArray())
        {
            text.ReplaceWith(outlined.Outline(text));
        }

        root.AddFirst(new XElement(root.Name.Namespace + "defs", outlined._letters.Values));
    }

    private XElement Outline(XElement text)
    {
        var scale = Number(text, "font-size") / BodySize;
        var strong = text.Attribute("font-weight") is not null;
        var group = new XElement(_svg + "g", text.Attributes().Where(attribute => !OfFonts.Contains(attribute.Name.LocalName)));
        group.SetAttributeValue("transform", string.Create(
            CultureInfo.InvariantCulture, $"{text.Attribute("transform")?.Value} translate(0 {Number(text, "y"):0.##}) scale({scale:0.#####})").TrimStart());
        if (text.Attribute("stroke-width") is not null)
        {
            group.SetAttributeValue("stroke-width", (Number(text, "stroke-width") / scale).ToString("0.#", CultureInfo.InvariantCulture));
        }

        // The writer puts the text on a line of its own and gives each letter its place.
        var letters = text.Value.Trim().EnumerateRunes().ToArray();
        var places = Numbers(text, "x").ToArray();
        if (letters.Length != places.Length)
        {
            throw new InvalidOperationException($"There are {places.Length} places for the {letters.Length} letters of \"{text.Value.Trim()}\".");
        }

        foreach (var (letter, x) in letters.Zip(places))
        {
            if (!Rune.IsWhiteSpace(letter))
            {
                group.Add(new XElement(
                    _svg + "use",
                    new XAttribute("href", $"#{Name(letter, strong)}"),
                    new XAttribute("x", (x / scale).ToString("0", CultureInfo.InvariantCulture))));
            }
        }

        return group;
    }

    private string Name(Rune letter, bool strong)
    {
        var name = string.Create(CultureInfo.InvariantCulture, $"{(strong ? 's' : 'r')}{letter.Value:x}");
        if (!_letters.ContainsKey(name))
        {
            _letters.Add(name, new XElement(_svg + "path", new XAttribute("id", name), new XAttribute("d", OutlineOf(letter, strong))));
        }

        return name;
    }

    /// <summary>The outline of a letter as path data, a thousand units to its body.</summary>
    internal static string OutlineOf(Rune letter, bool strong)
    {
        using var font = new TextStyle(BodySize, Ink.Text, strong).Font();
        using var outline = font.GetGlyphPath(font.GetGlyph(letter.Value));
        return Whole(outline?.ToSvgPathData() ?? "");
    }

    private static string Whole(string path) => Fraction().Replace(
        path, number => double.Parse(number.ValueSpan, CultureInfo.InvariantCulture).ToString("0", CultureInfo.InvariantCulture));

    [GeneratedRegex(@"-?\d*\.\d+(e-?\d+)?")]
    private static partial Regex Fraction();

    private static double Number(XElement text, string name) => Numbers(text, name).First();

    private static IEnumerable<double> Numbers(XElement text, string name) => text.Attribute(name)!.Value
        .Split([',', ' '], StringSplitOptions.RemoveEmptyEntries)
        .Select(number => double.Parse(number, CultureInfo.InvariantCulture));
}
