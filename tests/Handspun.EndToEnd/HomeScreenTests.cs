using System.Buffers.Binary;
using System.Text.Json;
using Handspun.EndToEnd.Parts;

namespace Handspun.EndToEnd;

/// <summary>The station on a phone's home screen: its manifest (W3C Web Application Manifest) and icons.</summary>
public sealed class HomeScreenTests
{
    [Fact]
    public async Task Manifest_LinkedFromAPage_NamesIconsThatAreServedInTheirSizes()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        var page = await workshop.Http.GetStringAsync("");
        Assert.Contains("<link rel=\"manifest\" href=\"/manifest.webmanifest\"", page, StringComparison.Ordinal);
        Assert.Contains("<link rel=\"apple-touch-icon\" href=\"/icon-180.png\"", page, StringComparison.Ordinal);

        var answer = await workshop.Http.GetAsync("manifest.webmanifest");

        Assert.Equal("application/manifest+json", answer.Content.Headers.ContentType?.MediaType);   // IANA media type
        var manifest = JsonDocument.Parse(await answer.Content.ReadAsStringAsync()).RootElement;
        Assert.Equal("standalone", manifest.GetProperty("display").GetString());
        var icons = manifest.GetProperty("icons").EnumerateArray().ToList();
        Assert.Contains(icons, icon => icon.GetProperty("purpose").GetString() == "maskable");
        foreach (var icon in icons.Where(icon => icon.GetProperty("type").GetString() == "image/png"))
        {
            Assert.Equal(icon.GetProperty("sizes").GetString(), Size(await workshop.Http.GetByteArrayAsync(icon.GetProperty("src").GetString())));
        }

        Assert.Equal("180x180", Size(await workshop.Http.GetByteArrayAsync("icon-180.png")));
        Assert.Contains("<svg", await workshop.Http.GetStringAsync("icon.svg"), StringComparison.Ordinal);
        foreach (var shortcut in manifest.GetProperty("shortcuts").EnumerateArray())
        {
            Assert.True((await workshop.Http.GetAsync(shortcut.GetProperty("url").GetString())).IsSuccessStatusCode);
        }
    }

    // Width and height stand at the beginning of a PNG's first chunk (ISO/IEC 15948, 11.2.2).
    private static string Size(byte[] png)
    {
        Assert.Equal([0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A], png[..8]);
        return string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{BinaryPrimitives.ReadUInt32BigEndian(png.AsSpan(16))}x{BinaryPrimitives.ReadUInt32BigEndian(png.AsSpan(20))}");
    }
}
