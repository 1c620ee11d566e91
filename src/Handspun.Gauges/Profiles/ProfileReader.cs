using Handspun.Gauges.Hid;
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
        ProfileSource source;
        try
        {
            source = new(name, SyntaxParser.ParseStrict(toml, name + ".toml", validate: true));   // the serializer lets a key stand twice
            table = TomlSerializer.Deserialize<TomlTable>(toml) ?? [];
        }
        catch (TomlException e)
        {
            throw new ProfileException([$"Profile '{name}' is not TOML: {e.Message}"]);
        }

        var root = new ProfileSection(source, "", table);
        var title = root.Text("title", name);
        var link = LinkReader.Read(root.Section("link")) with { Hid = HidReader.Read(root) };
        var frame = link.Hid is HidReportFormat ? new TextLineFormat() : FrameReader.Read(root.Section("frame"), root.Section("flags"));
        var (value, accuracy) = ValueReader.Read(root.Section("value"));
        var request = RequestReader.Read(root.Section("request"), frame.Request, frame.RequestEvery);
        var index = IndexReader.Read(root.Section("index"));
        var every = ReadClock(root.Section("clock"));
        if (link.Hid is HidKeyboardFormat && frame is not TextFormat)
        {
            root.Complain("frame.kind", "is one of text where hid.kind is \"keyboard\": keys type text");
        }

        if (index is { Source: IndexSource.Token } && !frame.TellsIndex)
        {
            root.Complain("index.source", "cannot be \"token\" without one: write [flags] with index = what the gauge sends when the index passes");
        }

        if (index is { Source: IndexSource.HidButton } && link.Hid is not HidReportFormat { TellsIndex: true })
        {
            root.Complain("index.source", "cannot be \"hid-button\" without a button: write [hid] with kind = \"report\", and [flags] with index = the button's number");
        }

        root.RefuseTheRest();
        return source.Problems.Count == 0
            ? new GaugeProfile { Name = name, Title = title, Link = link, Frame = frame, Value = value, Accuracy = accuracy, Request = request, Index = index, SendsEvery = every, Text = toml }
            : throw new ProfileException(source.Problems);
    }

    private static TimeSpan? ReadClock(ProfileSection section)
    {
        var milliseconds = section.Number("every_ms", 0, 0.1, 10_000);
        section.RefuseTheRest();
        return milliseconds > 0 ? TimeSpan.FromMilliseconds(milliseconds) : null;
    }
}
