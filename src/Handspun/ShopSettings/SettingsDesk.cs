using System.Globalization;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Toml;
using Handspun.SharedFiles;
using Handspun.Station;

namespace Handspun.ShopSettings;

/// <summary>Reads the shop's settings and changes them while the station runs.</summary>
/// <remarks>
/// The file stays the shop's own: only values that differ are written, each in its place, so that comments, order and whatever
/// else stands there are kept. What the file says is taken on whenever it is looked at or saved.
/// </remarks>
internal sealed class SettingsDesk(StationOptions options)
{
    /// <summary>The shop's ways as they hold now.</summary>
    public ShopWays Ways => options.Shop;

    /// <summary>What the file says, with the tag of its text.</summary>
    /// <exception cref="StationTroubleException">Somebody edited it so that it does not hold.</exception>
    public (ShopFile Settings, string Tag) Look()
    {
        var text = SharedText.Read(options.Data.Shop);
        return (options.Shop.Now = ShopFile.Parse(text.Text, options.Data.Shop), text.Tag);
    }

    /// <summary>Writes settings and takes them on.</summary>
    /// <param name="settings">What is to hold.</param>
    /// <param name="seen">The tag of what was changed; null minds nobody.</param>
    /// <returns>The new tag.</returns>
    /// <exception cref="ChangedMeanwhileException">Somebody else saved meanwhile.</exception>
    /// <exception cref="StationTroubleException">Somebody edited the file so that it does not hold.</exception>
    public string Save(ShopFile settings, string? seen)
    {
        var after = SharedText.Change(options.Data.Shop, seen, text => With(text, ShopFile.Parse(text, options.Data.Shop), settings));
        options.Shop.Now = ShopFile.Parse(after.Text, options.Data.Shop);
        return after.Tag;
    }

    private static string With(string text, ShopFile before, ShopFile after)
    {
        var written = text.Length == 0 ? "# The shop's ways: the page Shop writes this file, and an editor may.\n" : text;
        void Set(bool differs, string key, string value) => written = differs ? TomlLines.Set(written, key, value) : written;

        Set(before.Unit.IsInch != after.Unit.IsInch, "unit", TomlLines.Quoted(LengthText.Symbol(after.Unit)));
        Set(before.Unit != after.Unit, "places", after.Unit.Places.ToString(CultureInfo.InvariantCulture));
        Set(before.StepAfter != after.StepAfter, "step_after_s", ((long)after.StepAfter.TotalSeconds).ToString(CultureInfo.InvariantCulture));
        Set(!before.Mechanics.SequenceEqual(after.Mechanics), "mechanics", TomlLines.Quoted(after.Mechanics));
        return written;
    }
}
