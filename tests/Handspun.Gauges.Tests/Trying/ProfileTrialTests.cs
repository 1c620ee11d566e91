using System.Runtime.CompilerServices;
using System.Text;
using Handspun.Gauges.Journal;
using Handspun.Gauges.Links;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Tests.Journal;
using Handspun.Gauges.Trying;

namespace Handspun.Gauges.Tests.Trying;

public sealed class ProfileTrialTests
{
    private static readonly ProfileShelf Shelf = new(ProfileShelf.ShippedFolder);

    public static TheoryData<string> Samples =>
        [.. Directory.EnumerateFiles(Root("sample-captures"), "*.jsonl").Select(file => Path.GetFileName(file)!)];

    // Of all profiles that could listen at such a port, the gauge's own must suit, and none may be put before it, except one that
    // reads the very same values out of the bytes.
    [Theory]
    [MemberData(nameof(Samples))]
    public void Sample_OfEachKindOfGauge_IsRecognised(string file)
    {
        using var journal = JournalReader.Open(Path.Combine(Root("sample-captures"), file));
        var entries = journal.Entries().ToList();
        Assert.True(GaugePort.TryParse(journal.Header.Profile.StartsWith("hid-", StringComparison.Ordinal) ? "hid:1209:0001" : "tcp://gauge:1", out var port));
        var profiles = ListeningTrial.Ways(port!, Shelf.Names.Select(Shelf.Find)).SelectMany(way => way).ToList();

        var trials = new HeardStretch(profiles, entries, entries[^1].At - entries[0].At).Trials().ToList();

        var own = trials.Single(trial => trial.Profile.Name == journal.Header.Profile);
        Assert.True(own.Suits, $"{own.Readings} readings, {own.Unreadable} unreadable, {own.Unlikely} unlikely");
        Assert.Equal((own.Low, own.High), (trials[0].Low, trials[0].High));
    }

    [Fact]
    public void Lines_ThatNameTheirUnit_SpeakForThemselves_AndThoseThatDoNotGoByTheProfile()
    {
        var named = Heard("+0.0100 in\r\n", 20).Trials().ToList();
        Assert.All(named, trial => Assert.True(trial.NamesUnit));
        Assert.Equal(0.254, named[0].High!.Value, 1e-9);

        var plain = Heard("+0.0100\r\n", 20).Trials().ToDictionary(trial => trial.Profile.Name);
        Assert.Equal((0.01, 0.254), (plain["text-line"].High!.Value, Math.Round(plain["text-line-inch"].High!.Value, 9)));
        Assert.False(plain["text-line"].NamesUnit);
    }

    [Fact]
    public void Frames_ThatLeap_AreUnlikely_AndSuitNobody()
    {
        var heard = new HeardStretch([Shelf.Find("text-line")], [.. Enumerable.Range(0, 20).Select(i => Chunk(i, $"{(i % 2 == 0 ? 0 : 40)}.0\r\n"))], TimeSpan.FromSeconds(2));

        var trial = Assert.Single(heard.Trials());
        Assert.True(trial.Unlikely > 15);
        Assert.False(trial.Suits);
    }

    [Fact]
    public void Noise_IsNobodys()
    {
        var bytes = new byte[400];
        new Random(7).NextBytes(bytes);

        Assert.DoesNotContain(Heard(Encoding.Latin1.GetString(bytes), 5).Trials(), trial => trial.Suits);
    }

    [Fact]
    public void Ways_ThatAsk_ComeLast_AndProfilesThatListenAlikeStandTogether()
    {
        Assert.True(GaugePort.TryParse("/dev/ttyUSB0", out var port));
        GaugeProfile[] profiles =
        [
            ProfileReader.Read("asks", "[request]\nsend = \"?\"\n"),
            ProfileReader.Read("fast", "[link]\nbaud = 19200\n"),
            ProfileReader.Read("plain", ""),
            ProfileReader.Read("plain-too", "[value]\nunit = \"in\"\n"),
        ];

        Assert.Equal(["fast", "plain plain-too", "asks"], ListeningTrial.Ways(port!, profiles).Select(way => string.Join(' ', way.Select(profile => profile.Name))));
    }

    private static HeardStretch Heard(string text, int times) =>
        new([Shelf.Find("text-line"), Shelf.Find("text-line-inch")], [.. Enumerable.Range(0, times).Select(i => Chunk(i, text))], TimeSpan.FromSeconds(times / 10.0));

    private static JournalEntry.Chunk Chunk(int i, string text) => new(Journals.At(0.2 + i / 10.0), Encoding.Latin1.GetBytes(text));

    private static string Root(string folder, [CallerFilePath] string here = "") => Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", folder);
}
