using Handspun.Gauges.Hid;
using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Profiles;

/// <summary>Reads the section <c>[hid]</c> of a profile, and <c>[flags]</c> where the values come in reports.</summary>
internal static class HidReader
{
    private const int MostBits = 16384 * 8;
    private const int WidestField = 32;

    private static readonly Dictionary<string, bool> Kinds = new() { ["report"] = true, ["keyboard"] = false };
    private static readonly Dictionary<string, bool> DecimalSigns = new() { ["point"] = false, ["comma"] = true };

    /// <summary>Reads it; null where the profile has none.</summary>
    /// <param name="root">The profile.</param>
    public static HidFormat? Read(ProfileSection root)
    {
        var section = root.Section("hid");
        if (section.IsEmpty)
        {
            return null;
        }

        if (!section.Has("kind"))
        {
            section.Complain("kind", "is needed: \"report\" for a gauge that sends its value in a report, \"keyboard\" for one that types it");
        }

        HidFormat format = section.Choice("kind", "keyboard", Kinds) ? ReadReport(root, section) : ReadKeyboard(section);
        section.RefuseTheRest();
        return format;
    }

    private static HidKeyboardFormat ReadKeyboard(ProfileSection section) => new() { DecimalComma = section.Choice("decimal", "point", DecimalSigns) };

    private static HidReportFormat ReadReport(ProfileSection root, ProfileSection section)
    {
        if (!root.Section("frame").IsEmpty)
        {
            root.Complain("frame", "has no meaning where hid.kind is \"report\": leave it out");
        }

        var (byUsage, byPlace) = (section.Has("usage") || section.Has("usage_page"), section.Has("bit_offset") || section.Has("bit_width"));
        var whole = byUsage ? section.Has("usage") && section.Has("usage_page") : section.Has("bit_offset") && section.Has("bit_width");
        if (byUsage == byPlace || !whole)
        {
            section.Complain(byPlace ? "bit_offset" : "usage", "is one of two ways: give usage_page and usage, or bit_offset and bit_width");
        }

        var usage = new HidUsage((ushort)section.Whole("usage_page", 0, 0, ushort.MaxValue), (ushort)section.Whole("usage", 0, 0, ushort.MaxValue));
        var report = (byte)section.Whole("report_id", 0, 1, byte.MaxValue);
        var place = new FieldPlace(report, section.Whole("bit_offset", 0, 0, MostBits - WidestField), section.Whole("bit_width", 1, 1, WidestField), section.Switch("signed") ?? false);
        if (byUsage && section.Has("signed"))
        {
            section.Complain("signed", "is told by the gauge where the value is found by its usage: leave it out");
        }

        return new()
        {
            Usage = byPlace ? null : usage,
            Place = byPlace ? place : null,
            ReportId = report,
            InCounts = section.Switch("counts") ?? false,
            Flags = ReadFlags(root.Section("flags"), byPlace),
        };
    }

    private static List<HidFlag> ReadFlags(ProfileSection section, bool byPlace)
    {
        var (least, most) = byPlace ? (0, MostBits - 1) : (1, ushort.MaxValue);
        var flags = FlagsReader.Keys
            .Select(key => (key.Flag, Number: section.MaybeWhole(key.Key, least, most)))
            .Where(key => key.Number is not null)
            .Select(key => new HidFlag(key.Number!.Value, key.Flag, key.Flag == GaugeFlags.None))
            .ToList();
        section.RefuseTheRest();
        return flags;
    }
}
