using System.Buffers;
using System.Globalization;
using System.Text;
using Handspun.Gauges.Decoding;
using Handspun.Gauges.Decoding.Text;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Tests.Decoding.Text;

public class TextLineDecodingTests
{
    [Theory]
    [InlineData("+0.0125", 0.0125, null)]
    [InlineData("-0.308 mm", -0.308, GaugeUnit.Millimetre)]
    [InlineData("0.0031 in", 0.0031, GaugeUnit.Inch)]
    [InlineData("0.0031inch", 0.0031, GaugeUnit.Inch)]
    [InlineData("0.0031\"", 0.0031, GaugeUnit.Inch)]
    [InlineData("1.5 MM", 1.5, GaugeUnit.Millimetre)]
    [InlineData("1.5In", 1.5, GaugeUnit.Inch)]
    [InlineData("  +  12.5 \t mm \t ", 12.5, GaugeUnit.Millimetre)]
    [InlineData("3 mm\t ", 3, GaugeUnit.Millimetre)]
    [InlineData(".5", 0.5, null)]
    [InlineData("-.5", -0.5, null)]
    [InlineData("5.", 5, null)]
    [InlineData("000012", 12, null)]
    [InlineData("0", 0, null)]
    public void Line_OfANumberAndAUnit_IsThatNumber(string line, double value, GaugeUnit? unit)
    {
        var frame = Decode(line);

        Assert.Equal(FrameFault.None, frame.Fault);
        Assert.Equal(value, frame.Value);
        Assert.Equal(unit, frame.Unit);
    }

    [Theory]
    [InlineData("1,234", FrameFault.UnknownUnit, 1)]
    [InlineData("1e3", FrameFault.UnknownUnit, 1)]
    [InlineData("1.5E-3 mm", FrameFault.UnknownUnit, 3)]
    [InlineData("12 cm", FrameFault.UnknownUnit, 3)]
    [InlineData("12 mm mm", FrameFault.UnknownUnit, 3)]
    [InlineData("12 34", FrameFault.UnknownUnit, 3)]
    [InlineData("12''", FrameFault.UnknownUnit, 2)]
    [InlineData("no reading", FrameFault.NotANumber, 0)]
    [InlineData("  mm", FrameFault.NotANumber, 2)]
    [InlineData("+", FrameFault.NotANumber, 1)]
    [InlineData("- ", FrameFault.NotANumber, 2)]
    [InlineData("+-1", FrameFault.NotANumber, 1)]
    [InlineData(".", FrameFault.NotANumber, 0)]
    [InlineData("1.2.3", FrameFault.NotANumber, 0)]
    [InlineData(" 1..2", FrameFault.NotANumber, 1)]
    [InlineData("NaN", FrameFault.NotANumber, 0)]
    [InlineData("Infinity", FrameFault.NotANumber, 0)]
    [InlineData("0x12", FrameFault.UnknownUnit, 1)]
    public void Line_WithAnythingMore_IsRejectedWhereItGoesWrong(string line, FrameFault fault, int position)
    {
        var frame = Decode(line);

        Assert.Equal(fault, frame.Fault);
        Assert.Equal(position, frame.Position);
        Assert.Equal(0, frame.Value);
    }

    [Fact]
    public void Line_LongerThanTheLongest_IsTooLong()
    {
        var frame = Decode(new string('1', 65));

        Assert.Equal(FrameFault.TooLong, frame.Fault);
    }

    // IEEE Std 488.2: NR1 (section 8.7.2) and NR2 (8.7.3) are numbers without an exponent, NR3 (8.7.4) is with one, NRf (7.7.2) may be with one.
    [Fact]
    public void Line_InANumericFormOf488_2_IsReadWhereItsExponentIsAllowed()
    {
        var rows = File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Decoding", "ieee488-2-numbers.csv"))
            .Where(line => !line.StartsWith('#')).Skip(1).Select(line => line.Split(',')).ToList();
        Assert.Equal(["NR1", "NR2", "NR3", "NRf"], rows.Select(row => row[0]).Distinct());
        foreach (var row in rows)
        {
            var (text, value) = (row[2], double.Parse(row[3], CultureInfo.InvariantCulture));
            Assert.Equal(FrameResult.Of(value), Decode(text, new() { Number = new(Exponent: true, Comma: false) }));
            var without = Decode(text);
            Assert.Equal(text.Contains('E', StringComparison.Ordinal) ? FrameResult.Rejected(FrameFault.UnknownUnit, text.IndexOf('E', StringComparison.Ordinal)) : FrameResult.Of(value), without);
        }
    }

    // Listening is forgiving (IEEE Std 488.2, section 7.7.2, from memory): blanks about the E, no digit on one side of the point.
    [Theory]
    [InlineData("1.5 E 2", 150)]
    [InlineData("+.5e-1 mm", 0.05)]
    [InlineData("5.E1", 50)]
    [InlineData("-1E+00", -1)]
    public void Line_WithAnExponent_WrittenLoosely_IsRead(string line, double value) =>
        Assert.Equal(value, Decode(line, new() { Number = new(Exponent: true, Comma: false) }).Value);

    [Theory]
    [InlineData("1E400")]
    [InlineData("1E99999999999")]
    [InlineData("1E")]
    [InlineData("1E+")]
    public void Line_WithAnExponentThatIsNone_OrTooLarge_IsRejected(string line) =>
        Assert.NotEqual(FrameFault.None, Decode(line, new() { Number = new(Exponent: true, Comma: false) }).Fault);

    [Fact]
    public void Line_WithACommaForThePoint_IsReadWhereTheProfileSaysSo()
    {
        var comma = new TextGrammar { Number = new(Exponent: false, Comma: true) };
        Assert.Equal(FrameResult.Of(-1.25, GaugeUnit.Millimetre), Decode("-1,25 mm", comma));
        Assert.NotEqual(FrameFault.None, Decode("-1.25 mm", comma).Fault);
    }

    [Fact]
    public void Line_WithWords_TellsUnitFlagsAndIndex_InAnyOrder()
    {
        var grammar = new TextGrammar
        {
            Units = new(["M"], ["E", "I"]),
            Tokens = new([new("LOW", GaugeFlags.BatteryLow, false), new("HLD", GaugeFlags.Hold, false), new("IDX", GaugeFlags.None, true), new("----", GaugeFlags.Overrange, false)]),
        };

        Assert.Equal(FrameResult.Of(0.5, GaugeUnit.Inch, GaugeFlags.BatteryLow | GaugeFlags.Hold, index: true), Decode("0.5 LOW e IDX HLD", grammar));
        Assert.Equal(FrameResult.Of(0.5, null, GaugeFlags.Hold), Decode("0.5HLD", grammar));
        Assert.Equal(FrameResult.Without(GaugeFlags.Overrange), Decode("  ---- ", grammar));
        Assert.Equal(FrameResult.Without(GaugeFlags.None, index: true), Decode("IDX", grammar));
        Assert.Equal(FrameFault.UnknownUnit, Decode("0.5 mm", grammar).Fault);
        Assert.Equal(FrameFault.UnknownUnit, Decode("0.5 M M", grammar).Fault);
    }

    [Fact]
    public void Line_WithABeginning_IsReadBehindIt()
    {
        Assert.Equal(FrameResult.Of(1.5, GaugeUnit.Millimetre), Decode("A1: +1.5 mm", before: "A1:"));
        Assert.Equal(FrameResult.Rejected(FrameFault.NoMatch, 0), Decode("A2: +1.5 mm", before: "A1:"));
        Assert.Equal(FrameResult.Rejected(FrameFault.NotANumber, 4), Decode("A1: x", before: "A1:"));
    }

    private static FrameResult Decode(string line, TextGrammar? grammar = null, string before = "")
    {
        var format = new TextLineFormat { Grammar = grammar ?? new(), Before = Encoding.Latin1.GetBytes(before) };
        var pending = new ReadOnlySequence<byte>(Encoding.Latin1.GetBytes(line + "\n"));
        Assert.True(format.CreateCodec().TryTakeFrame(ref pending, out var frame));
        Assert.True(pending.IsEmpty);
        return frame;
    }
}
