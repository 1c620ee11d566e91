using Handspun.Gauges.Readings;
using Tomlyn;
using Tomlyn.Model;
using Tomlyn.Parsing;

namespace Handspun.Gauges.Profiles;

/// <summary>Reads a profile from TOML and tells all that is wrong with it at once.</summary>
public static class ProfileReader
{
    /// <summary>Reads a profile.</summary>
    /// <param name="name">The name of the file without its ending.</param>
    /// <param name="toml">Its text.</param>
    /// <exception cref="ProfileException">It is not TOML, or a key or value is wrong.</exception>
    public static GaugeProfile Read(string name, string toml)
    {
        TomlTable table;
        try
        {
            SyntaxParser.ParseStrict(toml, name + ".toml", validate: true);   // the serializer lets a key stand twice
            table = TomlSerializer.Deserialize<TomlTable>(toml) ?? [];
        }
        catch (TomlException e)
        {
            throw new ProfileException([$"Profile '{name}' is not TOML: {e.Message}"]);
        }

        var problems = new List<string>();
        var root = new ProfileSection(name, "", table, problems);
        var title = root.Text("title", name);
        var link = LinkReader.Read(root.Section("link"));
        var frame = ReadFrame(root.Section("frame"));
        var accuracy = ReadAccuracy(root.Section("value"));
        var request = RequestReader.Read(root.Section("request"));
        var index = IndexReader.Read(root.Section("index"));
        root.RefuseTheRest();
        return problems.Count == 0
            ? new GaugeProfile { Name = name, Title = title, Link = link, Frame = frame, Accuracy = accuracy, Request = request, Index = index, Text = toml }
            : throw new ProfileException(problems);
    }

    private static TextLineFormat ReadFrame(ProfileSection section)
    {
        section.Choice("kind", "text-line", new Dictionary<string, string> { ["text-line"] = "" });
        var format = new TextLineFormat
        {
            Unit = section.Choice("unit", "mm", new Dictionary<string, GaugeUnit> { ["mm"] = GaugeUnit.Millimetre, ["in"] = GaugeUnit.Inch }),
            LongestLine = section.Whole("longest_line", 64, 8, 256),
            Inverted = section.Switch("inverted") ?? false,
        };
        section.RefuseTheRest();
        return format;
    }

    private static GaugeAccuracy ReadAccuracy(ProfileSection section)
    {
        var accuracy = new GaugeAccuracy
        {
            ResolutionMillimetres = section.Number("resolution_mm", 0, 0, 1),
            ErrorLimitMillimetres = section.Number("error_limit_mm", 0, 0, 10),
        };
        section.RefuseTheRest();
        return accuracy;
    }
}
