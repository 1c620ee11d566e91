using System.Buffers;
using Handspun.Gauges.Decoding;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Readings;
using Handspun.Gauges.Tests.Framing;
using Handspun.Gauges.Tests.Listening;
using Handspun.Simulation.Speech;

namespace Handspun.Gauges.Tests.Profiles;

/// <summary>Ten million bytes that were changed, lost, doubled or made up go through one decoder of every shipped profile, as over a long day on a bad cable.</summary>
[Collection(Alone.Name)]   // it looks at the memory of all
public class DamageTests
{
    private const int Bytes = 10_000_000;
    private const int Stretch = 100_000;

    private static readonly ProfileShelf Shelf = new(ProfileShelf.ShippedFolder);

    public static TheoryData<string> Streams => [.. GaugeSpeeches.ByProfile.Keys.Order(StringComparer.Ordinal)];

    public static TheoryData<string> Reports => [.. HidSpeech.ByProfile.Keys.Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Streams))]
    public void TenMillionBytes_OfADamagedStream_NeverThrow_HoldLittle_AndOneFrameLaterAllIsWell(string name)
    {
        var damage = new Damage(20261125);
        var speech = GaugeSpeeches.ByProfile[name];
        var decoder = new ReadingDecoder(Shelf.Find(name));
        decoder.LinkOpened(TimeSpan.Zero);
        var chunks = new Chunks();
        var readings = new List<Reading>();
        var at = TimeSpan.FromSeconds(1);
        void Hear(ReadOnlySpan<byte> bytes)
        {
            at += TimeSpan.FromMilliseconds(20);
            chunks.Add(bytes, (ref ReadOnlySequence<byte> pending) => decoder.Decode(ref pending, at, readings));
        }

        var (fed, before) = (0L, 0L);
        while (fed < Bytes)
        {
            for (var end = fed + Stretch; fed < end;)
            {
                var piece = damage.Of(speech(new(damage.Value())));
                fed += piece.Length;
                Hear(piece);
                Assert.InRange(chunks.Pending, 0, FrameCut.MostBytes);
                Assert.All(readings, reading => Assert.True(double.IsFinite(reading.Millimetres)));
                readings.Clear();
            }

            double[] shown = [1.25, -2.5, 3.75];
            foreach (var millimetres in shown)
            {
                Hear(speech(new(millimetres, Inch: name == "text-line-inch")));
            }

            Assert.Equal(shown[1..], readings.TakeLast(2).Select(reading => Math.Round(reading.Millimetres, 3)));
            readings.Clear();
            before = before == 0 ? GC.GetTotalMemory(true) : before;
        }

        Assert.InRange(GC.GetTotalMemory(true) - before, long.MinValue, Bytes / 10);   // what it took in is not kept
        Assert.True(decoder.Unreadable > 1000);
    }

    [Theory]
    [MemberData(nameof(Reports))]
    public void TenMillionBytes_OfDamagedReports_NeverThrow_AndOneValueLaterAllIsWell(string name)
    {
        var damage = new Damage(20261126);
        var (descriptor, speech) = (HidSpeech.ByProfile[name].Descriptor, HidSpeech.ByProfile[name]);
        var decoder = new ReadingDecoder(Shelf.Find(name));
        decoder.LinkOpened(TimeSpan.FromSeconds(-1));
        decoder.LinkDescribed(descriptor);
        var readings = new List<Reading>();
        void Hear(byte[] report)
        {
            var pending = new ReadOnlySequence<byte>(report);
            decoder.Decode(ref pending, TimeSpan.FromSeconds(1), readings);
            Assert.True(pending.IsEmpty);
        }

        var fed = 0L;
        while (fed < Bytes)
        {
            for (var end = fed + Stretch; fed < end;)
            {
                foreach (var report in speech.Reports(damage.Value(), false))
                {
                    var changed = damage.Of(report);
                    fed += changed.Length;
                    Hear(changed);
                }

                Assert.All(readings, reading => Assert.True(double.IsFinite(reading.Millimetres)));
                readings.Clear();
            }

            Hear(new byte[8]);
            double[] shown = [1.25, -2.5, 3.75];
            foreach (var report in shown.SelectMany(millimetres => speech.Reports(millimetres, false)))
            {
                Hear(report);
            }

            Assert.Equal(shown[1..], readings.TakeLast(2).Select(reading => Math.Round(reading.Millimetres, 9)));
            readings.Clear();
        }
    }

    /// <summary>What a bad cable makes of bytes, the same on every run.</summary>
    private sealed class Damage(int seed)
    {
        private readonly Random _random = new(seed);

        public double Value() => Math.Round(18 * _random.NextDouble() - 9, 3);

        public byte[] Of(byte[] frame)
        {
            var at = _random.Next(frame.Length);
            switch (_random.Next(8))
            {
                case 0:
                    return frame[..at];
                case 1:
                    return [.. frame[..at], (byte)_random.Next(256), .. frame[at..]];
                case 2:
                    frame[at] = (byte)_random.Next(256);
                    return frame;
                case 3:
                    frame[at] ^= (byte)(1 << _random.Next(8));
                    return frame;
                case 4:
                    return [.. frame[..at], .. frame];
                case 5:
                    var noise = new byte[_random.Next(1, 40)];
                    _random.NextBytes(noise);
                    return noise;
                default:
                    return frame;
            }
        }
    }
}
