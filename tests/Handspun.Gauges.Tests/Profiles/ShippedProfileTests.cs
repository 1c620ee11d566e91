using System.Buffers;
using System.Runtime.CompilerServices;
using System.Text;
using CsCheck;
using Handspun.Gauges.Decoding;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Readings;
using Handspun.Gauges.Tests.Framing;
using Handspun.Metrology.Tests;
using Handspun.Simulation.Speech;

namespace Handspun.Gauges.Tests.Profiles;

/// <summary>Every shipped profile reads what a gauge of its kind sends, at any cut, behind any noise. The simulated gauges share no code with the decoders.</summary>
public class ShippedProfileTests
{
    private const int Cases = 200;

    private static readonly ProfileShelf Shelf = new(ProfileShelf.ShippedFolder);
    private static readonly Dictionary<string, GaugeProfile> Profiles = Shelf.Names.ToDictionary(name => name, Shelf.Find);

    public static TheoryData<string> Spoken => [.. GaugeSpeeches.ByProfile.Keys.Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Spoken))]
    public void Profile_OfASpokenFrame_ReadsWhatWasShown(string name) => Gen.Select(Gen.Double[-9.5, 9.5], Gen.Bool, Gen.Bool, Gen.Int[1, 5])
        .Each(Cases, (millimetres, inch, batteryLow, size) =>
        {
            inch &= name is not ("registers-float" or "text-exponent");   // they name no unit
            var bench = new Bench(Profiles[name]);
            bench.Decoder.LinkOpened(TimeSpan.Zero);
            bench.Feed(GaugeSpeeches.ByProfile[name](new(millimetres, inch, batteryLow)), TimeSpan.FromSeconds(1), size);
            var reading = Assert.Single(bench.Readings).Millimetres;

            Assert.InRange(reading - millimetres, -0.00065, 0.00065);   // half a step of the coarsest
            Assert.Equal(0, bench.Decoder.Unreadable);
            Assert.True(!batteryLow || name is "text-line" or "text-line-inch" or "text-exponent" or "nibbles-hex" or "registers-float" || bench.Decoder.Flags == GaugeFlags.BatteryLow);
        });

    [Theory]
    [MemberData(nameof(Spoken))]
    public void Profile_BehindNoise_FindsItsFeetWithinOneFrame(string name) => Gen.Select(Gen.Byte.Array[0, 300], Chunks.Sizes)
        .Each(Cases, (noise, sizes) =>
        {
            var bench = new Bench(Profiles[name]);
            bench.Decoder.LinkOpened(TimeSpan.Zero);
            foreach (var piece in Chunks.Of(noise, sizes))
            {
                bench.Feed(piece, TimeSpan.FromSeconds(1), int.MaxValue);
            }

            bench.Readings.Clear();
            var at = TimeSpan.FromSeconds(1);
            double[] shown = [1.25, -2.5, 3.75];
            foreach (var millimetres in shown)
            {
                at += TimeSpan.FromMilliseconds(20);
                bench.Feed(GaugeSpeeches.ByProfile[name](new(millimetres, Inch: name == "text-line-inch")), at, sizes[0]);
            }

            Assert.Equal(shown[1..], bench.Readings.TakeLast(2).Select(reading => Math.Round(reading.Millimetres, 3)));
        });

    [Theory]
    [MemberData(nameof(Spoken))]
    public void Profile_OfDamagedFrames_NeverThrows_AndHoldsLittle(string name) => Damage(Profiles[name]).Each(Cases, stream => Survives(name, stream));

    // A frame whose bytes were changed must not pass for a reading where the frame carries a check.
    [Theory]
    [InlineData("nibbles-packed")]
    [InlineData("bits-counted")]
    [InlineData("registers-whole")]
    [InlineData("registers-float")]
    public void Profile_WithACheck_TakesNoFrameInWhichOneBitIsWrong(string name)
    {
        var frame = GaugeSpeeches.ByProfile[name](new(1.25));
        for (var bit = 0; bit < 8 * frame.Length; bit++)
        {
            var wrong = frame.ToArray();
            wrong[bit / 8] ^= (byte)(1 << bit % 8);
            var bench = new Bench(Profiles[name]);
            bench.Decoder.LinkOpened(TimeSpan.Zero);
            bench.Feed(wrong, TimeSpan.FromSeconds(1), int.MaxValue);

            Assert.Empty(bench.Readings);
        }
    }

    // The frames that the pages show, worked out by hand from what they say of them.
    [Theory]
    [InlineData("text-columns", "text-frames.md", "01+0000.845MB", "\r", 0.845)]
    [InlineData("text-labelled", "text-frames.md", "ch=1;v=-0.308;u=mm;s=B", "\n", -0.308)]
    [InlineData("text-exponent", "text-frames.md", "+8.4500E-01", "\n", 0.845)]
    [InlineData("nibbles-hex", "binary-frames.md", "054800030", "\r", 0.845)]
    [InlineData("nibbles-packed", "binary-frames.md", "AA 80 00 08 45 30 57", null, -0.845)]
    [InlineData("bits-three-bytes", "binary-frames.md", "4D 03 10", null, -0.845)]
    [InlineData("bits-counted", "binary-frames.md", "A5 05 00 00 00 21 02 CD", null, 0.845)]
    public void Page_ShowsAFrame_ThatItsProfileReads(string name, string page, string frame, string? end, double millimetres)
    {
        Assert.Contains(frame, File.ReadAllText(Path.Combine(Root("hardware-notes"), page)), StringComparison.Ordinal);
        var bench = new Bench(Profiles[name]);
        bench.Decoder.LinkOpened(TimeSpan.Zero);
        bench.Feed(end is null ? Convert.FromHexString(frame.Replace(" ", "", StringComparison.Ordinal)) : Encoding.Latin1.GetBytes(frame + end), TimeSpan.FromSeconds(1), int.MaxValue);

        Assert.Equal(millimetres, Assert.Single(bench.Readings).Millimetres, 1e-12);
    }

    [Fact]
    public void Profiles_AllOfThem_HaveASampleAndAPage()
    {
        var pages = string.Concat(Directory.EnumerateFiles(Root("hardware-notes"), "*.md").Select(File.ReadAllText));
        Assert.All(Shelf.Names.Where(name => name != "text-line-inch"), name =>
        {
            Assert.NotEmpty(Directory.EnumerateFiles(Root("sample-captures"), name + "-*.jsonl"));
            Assert.Contains($"`{name}`", pages, StringComparison.Ordinal);
        });
    }

    private static Gen<byte[]> Damage(GaugeProfile profile)
    {
        var frames = Gen.Double[-9, 9].Select(value => GaugeSpeeches.ByProfile[profile.Name](new(value)));
        var piece = Gen.Select(frames, Gen.Int[0, 5], Gen.Int[0, 40], Gen.Byte, (frame, kind, at, value) => kind switch
        {
            0 => frame[..(at % frame.Length)],
            1 => [.. frame[..(at % frame.Length)], value, .. frame[(at % frame.Length)..]],
            2 => [.. frame[..(at % frame.Length)], value, .. frame[(at % frame.Length + 1)..]],
            3 => [.. frame[..(at % frame.Length)], .. frame],
            _ => frame,
        });
        return piece.Array[1, 12].Select(pieces => pieces.SelectMany(one => one).ToArray());
    }

    private static void Survives(string name, byte[] stream)
    {
        var bench = new Bench(Profiles[name]);
        bench.Decoder.LinkOpened(TimeSpan.Zero);
        bench.Feed(stream, TimeSpan.FromSeconds(1), 7);
        bench.Feed(stream, TimeSpan.FromSeconds(2), int.MaxValue);

        Assert.All(bench.Readings, reading => Assert.True(double.IsFinite(reading.Millimetres)));
        Assert.InRange(bench.Pending, 0, FrameCut.MostBytes);
    }

    private static string Root(string folder, [CallerFilePath] string here = "") => Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", folder);

    private sealed class Bench(GaugeProfile profile)
    {
        private readonly Chunks _chunks = new();

        public ReadingDecoder Decoder { get; } = new(profile);

        public List<Reading> Readings { get; } = [];

        public int Pending => _chunks.Pending;

        public void Feed(byte[] bytes, TimeSpan at, int size)
        {
            foreach (var piece in Chunks.Of(bytes, Math.Min(size, Math.Max(1, bytes.Length))))
            {
                _chunks.Add(piece, (ref ReadOnlySequence<byte> pending) => Decoder.Decode(ref pending, at, Readings));
            }
        }
    }
}
