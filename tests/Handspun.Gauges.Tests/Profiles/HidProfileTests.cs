using System.Buffers;
using CsCheck;
using Handspun.Gauges.Decoding;
using Handspun.Gauges.Hid;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Readings;
using Handspun.Simulation.Speech;

namespace Handspun.Gauges.Tests.Profiles;

/// <summary>Every shipped profile of a HID gauge reads what such a gauge sends. The simulated gauges share no code with the decoders.</summary>
public class HidProfileTests
{
    private static readonly ProfileShelf Shelf = new(ProfileShelf.ShippedFolder);

    public static TheoryData<string> Spoken => [.. HidSpeech.ByProfile.Keys.Order(StringComparer.Ordinal)];

    [Fact]
    public void Profiles_OfHidGauges_AreAllSpoken() =>
        Assert.Equal(Shelf.Names.Where(name => Shelf.Find(name).Hid is not null), HidSpeech.ByProfile.Keys.Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Spoken))]
    public void Profile_OfASpokenValue_ReadsWhatWasShown(string name) => Gen.Int[-9999, 9999].Sample(micrometres =>
    {
        var (decoder, readings) = Open(name);
        Hear(decoder, readings, HidSpeech.ByProfile[name].Reports(micrometres / 1000.0, false), 0.001);

        Assert.Equal(micrometres / 1000.0, Assert.Single(readings).Millimetres, 1e-12);   // right after the opening: a report has no tail
        Assert.Equal(0, decoder.Unreadable);
    }, iter: 200);

    // A profile that names bits suits every report that is long enough, so it is no word about the others.
    [Theory]
    [InlineData("hid-report", "hid-report, hid-report-index")]
    [InlineData("hid-report-index", "hid-report, hid-report-index")]
    [InlineData("hid-keyboard", "hid-keyboard")]
    [InlineData("hid-report-bits", "hid-keyboard, hid-report-bits")]
    public void Profile_SuitsTheGaugesThatHaveWhatItNames(string name, string gauges) => Assert.Equal(
        gauges,
        string.Join(", ", HidSpeech.ByProfile.Where(gauge =>
        {
            Assert.True(ReportDescriptor.TryParse(gauge.Value.Descriptor, out var descriptor, out var fault), fault.ToString());
            return Shelf.Find(name).Hid!.Suits(descriptor);
        }).Select(gauge => gauge.Key).Order(StringComparer.Ordinal)));

    [Theory]
    [MemberData(nameof(Spoken))]
    public void Profile_BehindNoise_FindsItsFeetWithinOneValue(string name) => Gen.Byte.Array[0, 12].Array[0, 30].Sample(noise =>
    {
        var (decoder, readings) = Open(name);
        Hear(decoder, readings, [.. noise, new byte[8]], 1);
        readings.Clear();
        foreach (var millimetres in new[] { 1.25, -2.5, 3.75 })
        {
            Hear(decoder, readings, HidSpeech.ByProfile[name].Reports(millimetres, false), 2);
        }

        Assert.Equal([-2.5, 3.75], readings.TakeLast(2).Select(reading => Math.Round(reading.Millimetres, 9)));
    }, iter: 300);

    [Fact]
    public void Index_OfAButton_ComesOnceForEachTimeThatItGoesDown()
    {
        var (decoder, readings) = Open("hid-report-index");
        List<TimeSpan> pulses = [];
        for (var i = 0; i < 60; i++)
        {
            Hear(decoder, readings, HidSpeech.ByProfile["hid-report-index"].Reports(0.01, i % 20 is >= 5 and < 9), i);
            pulses.AddRange(decoder.Pulses);
        }

        Assert.Equal([5.0, 25, 45], pulses.Select(at => at.TotalSeconds));
        Assert.Equal(60, readings.Count);
    }

    private static (ReadingDecoder Decoder, List<Reading> Readings) Open(string name)
    {
        var decoder = new ReadingDecoder(Shelf.Find(name));
        decoder.LinkOpened(name == "hid-keyboard" ? TimeSpan.FromSeconds(-1) : TimeSpan.Zero);   // typing may be met in the middle, a report not
        decoder.LinkDescribed(HidSpeech.ByProfile[name].Descriptor);
        return (decoder, []);
    }

    private static void Hear(ReadingDecoder decoder, List<Reading> readings, IEnumerable<byte[]> reports, double seconds)
    {
        foreach (var report in reports)
        {
            var pending = new ReadOnlySequence<byte>(report);
            decoder.Decode(ref pending, TimeSpan.FromSeconds(seconds), readings);
            Assert.True(pending.IsEmpty);
        }
    }
}
