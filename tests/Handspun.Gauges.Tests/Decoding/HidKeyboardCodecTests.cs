using System.Buffers;
using System.Globalization;
using CsCheck;
using Handspun.Gauges.Decoding;
using Handspun.Gauges.Hid;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Tests.Hid;

namespace Handspun.Gauges.Tests.Decoding;

public class HidKeyboardCodecTests
{
    [Theory]
    [InlineData("+0.0125\n", 0.0125)]
    [InlineData("-12.5mm\n", -12.5)]
    [InlineData("0.1 in\n", 0.1)]
    [InlineData("  3\n", 3)]
    public void Value_ThatIsTyped_IsThatValue(string typed, double value)
    {
        var frame = Assert.Single(Decode(Typing.Of(typed)));

        Assert.Equal(FrameFault.None, frame.Fault);
        Assert.Equal(value, frame.Value);
    }

    // HID Usage Tables, page 0x07 (hid-keyboard-usages.csv says from where).
    [Fact]
    public void Key_OfThePublishedTable_TypesWhatItSays()
    {
        var rows = File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Hid", "hid-keyboard-usages.csv")).Skip(2).ToList();
        Assert.Equal(38, rows.Count);
        foreach (var row in rows)
        {
            var cells = row.Split(',');
            var (key, types) = (byte.Parse(cells[0].AsSpan(2), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture), string.Join(',', cells[1..^1]).Trim('"'));
            var expected = types switch
            {
                "Enter" => "\n",
                "Backspace" => "?",   // takes back what was typed: no line with it is a value
                "Tab" => "\t",
                "Space" => " ",
                "Comma" => ",",
                "=; with shift +" => "=",
                "Left Shift" or "Right Shift" => "",
                _ => types,
            };
            Assert.Equal(expected, Text([Typing.Report(0, key)]));
        }

        Assert.Equal("++", Text([Typing.Report(Typing.LeftShift, 0x2E), Typing.Report(0), Typing.Report(Typing.RightShift, 0x2E)]));
    }

    [Fact]
    public void Keys_ThatRollOver_AreEachTypedOnce() => Assert.Equal("123", Text(
        [Typing.Report(0, 0x1E), Typing.Report(0, 0x1E, 0x1F), Typing.Report(0, 0x1F), Typing.Report(0, 0x20, 0x1F), Typing.Report(0)]));

    [Fact]
    public void Keys_ThatGoDownTogether_AreTypedInTheOrderOfTheReport() =>
        Assert.Equal("321", Text([Typing.Report(0, 0x20, 0x1F, 0x1E)]));

    [Fact]
    public void Key_ThatIsHeld_IsTypedOnce_AndAgainAfterItsRelease() => Assert.Equal("11", Text(
        [Typing.Report(0, 0x1E), Typing.Report(0, 0x1E), Typing.Report(0), Typing.Report(0, 0x1E), Typing.Report(Typing.LeftShift, 0x1E)]));

    // A keyboard with too many keys down says so in every slot; no key was released by that.
    [Fact]
    public void Report_ThatCannotTell_ChangesNothing() => Assert.Equal("12", Text(
        [Typing.Report(0, 0x1E), Typing.Report(0, 1, 1, 1, 1, 1, 1), Typing.Report(0, 0x1E, 0x1F)]));

    [Theory]
    [InlineData(0x01)]
    [InlineData(0x04)]
    [InlineData(0x08)]
    [InlineData(0x10)]
    [InlineData(0x40)]
    [InlineData(0x80)]
    public void Key_WithControlAltOrTheSystemKey_IsNoPartOfAValue(byte modifiers) =>
        Assert.Equal("?", Text([Typing.Report(modifiers, 0x1E)]));

    [Fact]
    public void Key_ThatTypesNothingOfAValue_SpoilsItsLine()
    {
        const byte escape = 0x29;
        var frames = Decode([.. Typing.Of("1"), Typing.Report(0, escape), Typing.Report(0), .. Typing.Of("2\n3\n")]);

        Assert.Equal([FrameFault.UnknownUnit, FrameFault.None], frames.Select(frame => frame.Fault));
        Assert.Equal(3, frames[1].Value);
    }

    [Fact]
    public void NumLock_AroundADigit_ChangesNothing()
    {
        const byte numLock = 0x53, keypad5 = 0x5D;
        Assert.Equal("5", Text([Typing.Report(0, numLock), Typing.Report(0, keypad5), Typing.Report(0, numLock)]));
    }

    [Fact]
    public void Comma_WhereTheProfileSaysSo_IsTheDecimalSign()
    {
        var german = new HidKeyboardFormat { DecimalComma = true };

        Assert.Equal([0.5], Decode(Typing.Of("0,5\n"), german).Select(frame => frame.Value));
        Assert.Equal("....?", Text([.. new byte[] { 0x36, 0x63, 0x85, 0x36, 0x37 }.SelectMany(key => new[] { Typing.Report(0, key), Typing.Report(0) })], german));
        Assert.Equal(FrameFault.UnknownUnit, Assert.Single(Decode(Typing.Of("0,5\n"))).Fault);
    }

    [Fact]
    public void Typing_WithoutAnEnd_IsToldOnce_AndTheNextLineIsGood()
    {
        var frames = Decode(Typing.Of(new string('7', 5000) + "\n0.5\n"));

        Assert.Equal([FrameFault.TooLong, FrameFault.None], frames.Select(frame => frame.Fault));
        Assert.Equal(0.5, frames[1].Value);
    }

    [Fact]
    public void Reports_OfAnyBytes_NeverThrow_AndOneLineAfterThemTheCodecFindsItsFeet() => Gen.Select(
        Gen.Byte.Array[0, 40].Array[0, 40], Gen.OneOf(Gen.Const("boot_keyboard"), Gen.Const("keyboard_101")))
        .Sample((noise, name) =>
        {
            Assert.True(KeyboardReport.TryFind(Descriptors.Parsed(Descriptors.Published("hid-descriptors.json").GetProperty(name).GetProperty("bytes").GetString()!), out var report));
            var frames = Decode([.. noise, Typing.Report(0), .. Typing.Of("\n0.5\n0.25\n")], report: report);

            Assert.Equal([0.5, 0.25], frames.TakeLast(2).Select(frame => frame.Value));
            Assert.All(frames, frame => Assert.True(double.IsFinite(frame.Value)));
        });

    private static List<FrameResult> Decode(IEnumerable<byte[]> reports, HidKeyboardFormat? format = null, KeyboardReport? report = null) =>
        Decode(new TextLineFormat().CreateCodec(), reports, format, report);

    private static string Text(IEnumerable<byte[]> reports, HidKeyboardFormat? format = null)
    {
        var heard = new TextHeard();
        Decode(heard, reports, format, null);
        return heard.Text;
    }

    private static List<FrameResult> Decode(IGaugeCodec text, IEnumerable<byte[]> reports, HidKeyboardFormat? format, KeyboardReport? report)
    {
        var codec = new HidKeyboardCodec(format ?? new(), report ?? KeyboardReport.Boot, text);
        List<FrameResult> frames = [];
        foreach (var one in reports)
        {
            var pending = new ReadOnlySequence<byte>(one);
            while (codec.TryTakeFrame(ref pending, out var frame))
            {
                frames.Add(frame);
            }

            Assert.True(pending.IsEmpty);
        }

        return frames;
    }

    // Keeps the text itself, which a decoder of values would not show.
    private sealed class TextHeard : IGaugeCodec
    {
        public string Text { get; private set; } = "";

        public bool TryTakeFrame(ref ReadOnlySequence<byte> pending, out FrameResult frame)
        {
            Text += System.Text.Encoding.ASCII.GetString(pending.ToArray());
            pending = pending.Slice(pending.End);
            frame = default;
            return false;
        }
    }
}
