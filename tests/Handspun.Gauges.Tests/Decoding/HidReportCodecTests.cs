using System.Buffers;
using System.Buffers.Binary;
using CsCheck;
using Handspun.Gauges.Decoding;
using Handspun.Gauges.Hid;
using Handspun.Gauges.Readings;
using Handspun.Gauges.Tests.Framing;
using Handspun.Gauges.Tests.Hid;

namespace Handspun.Gauges.Tests.Decoding;

public class HidReportCodecTests
{
    private static readonly HidReportFormat Gauge = new()
    {
        Usage = new(0xFF00, 2),
        Flags = [new(1, GaugeFlags.None, IsIndex: true), new(2, GaugeFlags.BatteryLow, IsIndex: false)],
    };

    [Theory]
    [InlineData(12345, 12.345)]
    [InlineData(-12345, -12.345)]
    [InlineData(0, 0)]
    [InlineData(32767, 32.767)]
    [InlineData(-32768, -32.768)]
    public void Value_OfAUsage_HasTheScaleOfTheDescriptor(short counts, double millimetres)
    {
        var frame = Assert.Single(Decode(Gauge, Descriptors.Gauge, Report(counts)));

        Assert.Equal((true, FrameFault.None, GaugeFlags.None, false), (frame.HasValue, frame.Fault, frame.Flags, frame.IsIndex));
        Assert.Equal((millimetres, GaugeUnit.Millimetre), (frame.Value, frame.Unit));
    }

    // Items that follow from USB HID 1.11, section 6.2.2.7 (hid-units.json).
    [Fact]
    public void Value_OfAConstructedDescriptor_IsItsLength()
    {
        var examples = Descriptors.Published("hid-units.json").GetProperty("constructed_length_examples").EnumerateArray().ToList();
        Assert.Equal(2, examples.Count);
        Assert.All(examples, example =>
        {
            var inch = example.TryGetProperty("value_inch", out var value);
            var frame = Assert.Single(Decode(
                new() { Usage = new(1, 0x30) },
                "05 01 09 30 " + example.GetProperty("items").GetString(),
                Descriptors.Bytes(example.GetProperty("report").GetString()!)));
            Assert.Equal((inch ? value : example.GetProperty("value_mm")).GetDouble(), frame.Value);
            Assert.Equal(inch ? GaugeUnit.Inch : GaugeUnit.Millimetre, frame.Unit);
        });
    }

    [Fact]
    public void Value_InCounts_IsLeftToTheProfile()
    {
        var frame = Assert.Single(Decode(Gauge with { InCounts = true }, Descriptors.Gauge, Report(-77)));

        Assert.Equal((-77.0, null), (frame.Value, frame.Unit));
    }

    // A device may tell that it has no value by one outside of its range (USB HID 1.11, section 5.10, from memory).
    [Theory]
    [InlineData(101)]
    [InlineData(-1)]
    [InlineData(-128)]
    public void Value_OutsideOfItsRange_IsNone(sbyte counts)
    {
        const string hundred = "05 01 09 30 15 00 25 64 35 00 45 64 65 11 55 0E 75 08 95 01 81 42";
        var format = new HidReportFormat { Usage = new(1, 0x30) };

        Assert.Equal(10, Assert.Single(Decode(format, hundred, [100])).Value);   // 100 hundredths of a centimetre
        var frame = Assert.Single(Decode(format, hundred, [(byte)counts]));
        Assert.Equal((false, FrameFault.None, GaugeFlags.Overrange), (frame.HasValue, frame.Fault, frame.Flags));
    }

    [Fact]
    public void Button_GoesDown_AndOnlyThatIsTheIndex() => Assert.Equal(
        [false, true, false, false, true],
        Decode(Gauge, Descriptors.Gauge, Report(1), Report(2, 1), Report(3, 1), Report(4), Report(5, 1)).Select(frame => frame.IsIndex));

    [Fact]
    public void Button_ThatIsDownFromTheBeginning_IsNoIndex() => Assert.Equal(
        [false, false, true],
        Decode(Gauge, Descriptors.Gauge, Report(1, 1), Report(2), Report(3, 1)).Select(frame => frame.IsIndex));

    [Fact]
    public void Button_OfAFlag_IsThatFlag_WhileItIsDown() => Assert.Equal(
        [GaugeFlags.None, GaugeFlags.BatteryLow, GaugeFlags.None],
        Decode(Gauge, Descriptors.Gauge, Report(1), Report(2, 2), Report(3, 1)).Select(frame => frame.Flags));

    [Fact]
    public void Button_InAReportOfItsOwn_HoldsUntilThatSaysOtherwise()
    {
        const string apart = "05 01 09 02 A1 01 85 01 09 30 16 00 80 26 FF 7F 55 0C 65 11 75 10 95 01 81 02 " +
            "85 02 05 09 15 01 25 04 55 00 65 00 19 01 29 04 75 08 95 02 81 00 C0";   // an array: two slots, each naming a button
        var frames = Decode(
            Gauge with { Usage = new(1, 0x30) }, apart, [2, 0, 0], [1, 5, 0], [2, 3, 2], [1, 6, 0], [2, 1, 0], [1, 7, 0], [9, 9]);

        Assert.Equal([0, 0.005, 0, 0.006, 0, 0.007], frames.Select(frame => frame.Value));
        Assert.Equal([false, true, false, true, false, true], frames.Select(frame => frame.HasValue));
        Assert.Equal([false, false, false, false, true, false], frames.Select(frame => frame.IsIndex));
        Assert.Equal([0, 0, 1, 1, 0, 0], frames.Select(frame => (int)frame.Flags));
    }

    [Theory]
    [InlineData(0, 8, false, 0xEF)]
    [InlineData(4, 8, false, 0xDE)]
    [InlineData(12, 12, true, -1348)]        // 0xABC
    [InlineData(1, 32, false, 0x55E6F7)]
    [InlineData(31, 1, true, 0)]
    [InlineData(24, 1, true, 0)]
    [InlineData(0, 1, true, -1)]
    public void Value_OfABitPlace_CountsFromTheLowestBitOfTheFirstByte(int offset, int width, bool twos, long counts)
    {
        // 0x00ABCDEF from the low end, and a byte more so that 32 bits fit behind bit 1.
        var frame = Assert.Single(Decode(new() { Place = new(0, offset, width, twos) }, null, [0xEF, 0xCD, 0xAB, 0x00, 0x00]));

        Assert.Equal(((0x00ABCDEFL >> offset) & ((1L << width) - 1)) is var raw && twos && raw >> (width - 1) == 1 ? raw - (1L << width) : raw, frame.Value);
        Assert.Equal(counts, frame.Value);
    }

    [Fact]
    public void Value_OfABitPlaceInANumberedReport_IsFoundInThatReportOnly()
    {
        var format = new HidReportFormat { Place = new(7, 8, 16, true), Flags = [new(0, GaugeFlags.Hold, false)] };

        var frames = Decode(format, null, [7, 1, 0xFE, 0xFF], [6, 0, 5, 0], [7, 0, 3, 0]);
        Assert.Equal([-2, 3], frames.Select(frame => frame.Value));
        Assert.Equal([GaugeFlags.Hold, GaugeFlags.None], frames.Select(frame => frame.Flags));
    }

    [Fact]
    public void Report_ThatIsTooShort_IsUnreadable()
    {
        Assert.Equal((FrameFault.TooShort, 2), Assert.Single(Decode(Gauge, Descriptors.Gauge, [3, 1])) is var frame ? (frame.Fault, frame.Position) : default);
        Assert.Empty(Decode(Gauge, Descriptors.Gauge, [4, 1, 2, 3]));   // of another number
    }

    [Theory]
    [InlineData(null)]   // nothing known
    [InlineData("05 01 75 08 95 01 09 30 81 02")]   // another usage
    [InlineData("06 00 FF 75 08 95 01 09 02 81 02")]   // no length
    [InlineData("06 00 FF 65 11 25 64 75 08 95 02 09 02 81 02")]   // two of them: which is meant?
    [InlineData("06 00 FF 65 11 25 64 75 08 95 01 09 02 81 06")]   // a change, not a value
    [InlineData("06 00 FF 65 11 25 64 75 08 95 01 09 02 91 02")]   // goes to the device
    public void Report_OfADeviceThatDoesNotHaveIt_IsUnreadable(string? descriptor)
    {
        var format = new HidReportFormat { Usage = new(0xFF00, 2) };

        Assert.Equal(FrameFault.NoMatch, Assert.Single(Decode(format, descriptor, [1, 2])).Fault);
        Assert.True(descriptor is null || !format.Suits(Descriptors.Parsed(descriptor)));
    }

    [Fact]
    public void Usage_InTwoReports_IsFoundInTheOneThatTheProfileNames()
    {
        const string twice = "06 00 FF 65 11 55 0C 25 64 75 08 95 01 85 01 09 02 81 02 85 02 09 02 81 02";
        Assert.False(new HidReportFormat { Usage = new(0xFF00, 2) }.Suits(Descriptors.Parsed(twice)));

        Assert.Equal([0.005], Decode(new() { Usage = new(0xFF00, 2), ReportId = 2 }, twice, [1, 4], [2, 5]).Select(frame => frame.Value));
    }

    [Fact]
    public void Place_OutsideOfTheDevicesReports_DoesNotSuitIt()
    {
        var descriptor = Descriptors.Parsed(Descriptors.Gauge);
        Assert.True(new HidReportFormat { Place = new(3, 8, 16, true) }.Suits(descriptor));
        Assert.False(new HidReportFormat { Place = new(3, 9, 16, true) }.Suits(descriptor));
        Assert.False(new HidReportFormat { Place = new(0, 0, 8, true) }.Suits(descriptor));
        Assert.False(new HidReportFormat { Place = new(3, 0, 8, true), Flags = [new(24, GaugeFlags.Hold, false)] }.Suits(descriptor));
        Assert.False((Gauge with { Flags = [new(3, GaugeFlags.Hold, false)] }).Suits(descriptor));   // there is no third button
    }

    [Fact]
    public void Reports_OfAnyBytes_NeverThrow_AndTheNextGoodOneIsRead() => Gen.Select(
        Gen.Byte.Array[0, 12].Array[0, 20], Gen.Short, Gen.Bool)
        .Sample((noise, counts, byPlace) =>
        {
            var format = byPlace ? new HidReportFormat { Place = new(3, 0, 16, true) } : Gauge;
            var frames = Decode(format, Descriptors.Gauge, [.. noise, Report(counts)]);

            Assert.Equal(byPlace ? counts : counts / 1000.0, frames[^1].Value);
            Assert.All(frames, frame => Assert.True(double.IsFinite(frame.Value)));
        });

    private static byte[] Report(short counts, byte buttons = 0)
    {
        var report = new byte[] { 3, 0, 0, buttons };
        BinaryPrimitives.WriteInt16LittleEndian(report.AsSpan(1), counts);
        return report;
    }

    // Each report whole and cut in two: what a reader left of the one before may lie in front of it.
    private static List<FrameResult> Decode(HidReportFormat format, string? descriptor, params byte[][] reports)
    {
        IGaugeCodec Codec() => format.CreateCodec(descriptor is null ? default : Descriptors.Bytes(descriptor), () => throw new InvalidOperationException("No text is typed."));
        var (whole, cut) = (Codec(), Codec());
        Assert.False(whole.StartsWithinFrame);
        List<FrameResult> frames = [];
        foreach (var report in reports)
        {
            var pending = new ReadOnlySequence<byte>(report);
            var before = frames.Count;
            while (whole.TryTakeFrame(ref pending, out var frame))
            {
                frames.Add(frame);
            }

            Assert.True(pending.IsEmpty);
            var pieces = Chunks.Sequence(report[..(report.Length / 2)], report[(report.Length / 2)..]);
            Assert.Equal(frames.Count > before, cut.TryTakeFrame(ref pieces, out var same));
            Assert.Equal(frames.Count > before ? frames[^1] : default, same is { Fault: FrameFault.TooShort } ? frames[^1] : same);
        }

        return frames;
    }
}
