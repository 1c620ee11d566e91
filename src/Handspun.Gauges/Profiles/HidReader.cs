using Handspun.Gauges.Hid;

namespace Handspun.Gauges.Profiles;

/// <summary>Reads the section <c>[hid]</c> of a profile.</summary>
internal static class HidReader
{
    private static readonly Dictionary<string, bool> DecimalSigns = new() { ["point"] = false, ["comma"] = true };

    /// <summary>Reads it; null where the profile has none.</summary>
    public static HidFormat? Read(ProfileSection section)
    {
        if (section.IsEmpty)
        {
            return null;
        }

        section.Choice("kind", "keyboard", new Dictionary<string, string> { ["keyboard"] = "" });
        var format = new HidKeyboardFormat { DecimalComma = section.Choice("decimal", "point", DecimalSigns) };
        section.RefuseTheRest();
        return format;
    }
}
