using System.Globalization;
using Handspun.Labels;
using Handspun.Screens;

namespace Handspun.Pages.Screens;

/// <summary>What the page for pairing shows.</summary>
/// <param name="Offer">The code to scan; null where the station serves this machine only.</param>
/// <param name="Screens">The paired screens.</param>
/// <param name="Example">How the option is written that opens the station to the shop's network.</param>
public sealed record ScreensView(OfferView? Offer, IReadOnlyList<ScreenView> Screens, string Example)
{
    /// <summary>The view as it stands now.</summary>
    internal static ScreensView Of(PairingDesk desk, TimeProvider time)
    {
        var now = time.GetUtcNow();
        return new(
            desk.Offer is var (code, address) ? OfferView.Of(code, address, time) : null,
            [.. desk.Screens.All.Select(screen => new ScreenView(
                screen.Number,
                screen.From,
                TimeZoneInfo.ConvertTime(screen.PairedAt, time.LocalTimeZone).ToString("d MMMM yyyy, HH:mm", CultureInfo.InvariantCulture),
                SeenWords(desk.Screens.SeenAt(screen), now)))],
            PairingDesk.Example());
    }

    private static string SeenWords(DateTimeOffset? seen, DateTimeOffset now) => seen switch
    {
        null => "not seen since the station was started",
        { } at when now - at < TimeSpan.FromMinutes(1) => "in use now",
        { } at => string.Create(CultureInfo.InvariantCulture, $"last seen {(now - at).TotalMinutes:0} min ago"),
    };
}

/// <summary>A code to scan.</summary>
/// <param name="Code">The code, in two groups, for who types it.</param>
/// <param name="Key">The code as the calls give it.</param>
/// <param name="Address">What it opens.</param>
/// <param name="Door">The address alone, for who types it.</param>
/// <param name="Until">Until when it is taken.</param>
/// <param name="Side">The drawing's side in modules.</param>
/// <param name="Path">The path of its dark ones.</param>
public sealed record OfferView(string Code, string Key, Uri Address, string Door, string Until, int Side, string Path)
{
    /// <summary>The view of a code.</summary>
    internal static OfferView Of(PairingCode code, Uri address, TimeProvider time)
    {
        var (side, path) = QrSign.Of(address.ToString());
        var middle = code.Text.Length / 2;
        return new(
            $"{code.Text[..middle]} {code.Text[middle..]}",
            code.Text,
            address,
            address.GetLeftPart(UriPartial.Authority),
            TimeZoneInfo.ConvertTime(code.EndsAt, time.LocalTimeZone).ToString("HH:mm", CultureInfo.InvariantCulture),
            side,
            path);
    }
}

/// <summary>One paired screen.</summary>
/// <param name="Number">Its number.</param>
/// <param name="From">The address it had.</param>
/// <param name="PairedAt">When it was paired.</param>
/// <param name="Seen">When it was last there, in words.</param>
public sealed record ScreenView(int Number, string From, string PairedAt, string Seen);

/// <summary>What a screen is told that is not paired.</summary>
/// <param name="Sentence">What is the matter and what to do.</param>
public sealed record UnpairedView(string Sentence);
