namespace Handspun.Gauges.Profiles;

/// <summary>Reads the section <c>[index]</c> of a profile.</summary>
internal static class IndexReader
{
    private const int LongestBounce = 1000;
    private const double MostTurns = 100;
    private const double FewestTurns = 0.01;

    private static readonly Dictionary<string, ModemLine> Lines = new() { ["cts"] = ModemLine.Cts, ["dsr"] = ModemLine.Dsr, ["dcd"] = ModemLine.Dcd, ["ri"] = ModemLine.Ri };
    private static readonly Dictionary<string, bool> Edges = new() { ["rising"] = false, ["falling"] = true };

    /// <summary>Reads it; null where the profile has none.</summary>
    public static IndexSettings? Read(ProfileSection section)
    {
        if (section.IsEmpty)
        {
            return null;
        }

        if (!section.Has("source"))
        {
            section.Complain("source", "says where the pulse comes from: " + string.Join(", ", IndexSettings.Sources.Keys.Order(StringComparer.Ordinal)));
        }

        var source = section.Choice("source", "key", IndexSettings.Sources);
        var onLine = source == IndexSource.Line;
        if (!onLine && (section.Has("line") || section.Has("edge")))
        {
            section.Complain(section.Has("line") ? "line" : "edge", "has a meaning only where source is \"line\": leave it out");
        }

        var settings = new IndexSettings
        {
            Source = source,
            Line = section.Choice("line", "cts", Lines),
            Falling = section.Choice("edge", "rising", Edges),
            Debounce = TimeSpan.FromMilliseconds(section.Whole("debounce_ms", 0, 0, LongestBounce)),
            Turns = section.Number("turns", 1, FewestTurns, MostTurns),
        };
        if (settings is { Source: IndexSource.Line, Line: ModemLine.Ri, Falling: true })
        {
            section.Complain("edge", "cannot be \"falling\" on the line ri, which shows only that it rang: use \"rising\" or another line");
        }

        section.RefuseTheRest();
        return settings;
    }
}
