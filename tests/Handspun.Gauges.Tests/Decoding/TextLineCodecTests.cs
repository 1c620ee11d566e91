using System.Buffers;
using System.Globalization;
using System.Text;
using Handspun.Gauges.Decoding;
using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Tests.Decoding;

public class TextLineCodecTests
{
    [Theory]
    [InlineData("+0.0125", 0.0125, GaugeUnit.Millimetre)]
    [InlineData("-0.308 mm", -0.308, GaugeUnit.Millimetre)]
    [InlineData("0.0031 in", 0.0031, GaugeUnit.Inch)]
    [InlineData("0.0031inch", 0.0031, GaugeUnit.Inch)]
    [InlineData("0.0031\"", 0.0031, GaugeUnit.Inch)]
    [InlineData("1.5 MM", 1.5, GaugeUnit.Millimetre)]
    [InlineData("1.5In", 1.5, GaugeUnit.Inch)]
    [InlineData("  +  12.5 \t mm \t ", 12.5, GaugeUnit.Millimetre)]
    [InlineData("3 mm\t ", 3, GaugeUnit.Millimetre)]
    [InlineData(".5", 0.5, GaugeUnit.Millimetre)]
    [InlineData("-.5", -0.5, GaugeUnit.Millimetre)]
    [InlineData("5.", 5, GaugeUnit.Millimetre)]
    [InlineData("000012", 12, GaugeUnit.Millimetre)]
    [InlineData("0", 0, GaugeUnit.Millimetre)]
    public void Line_OfANumberAndAUnit_IsThatNumber(string line, double value, GaugeUnit unit)
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
        Assert.Equal(64, frame.Position);
    }

    [Fact]
    public void Line_OfAGaugeThatCountsTheOtherWay_ChangesItsSign()
    {
        Assert.Equal(-0.5, Decode("+0.5", inverted: true).Value);
        Assert.Equal(0.5, Decode("-0.5 mm", inverted: true).Value);
    }

    [Fact]
    public void Line_WithoutAUnit_IsInTheProfilesUnit() =>
        Assert.Equal(GaugeUnit.Inch, Decode("0.0031", unit: GaugeUnit.Inch).Unit);

    // IEEE Std 488.2: NR1 (section 8.7.2) and NR2 (8.7.3) are numbers without an exponent, NR3 (8.7.4) is with one.
    [Fact]
    public void Line_InANumericFormOf488_2_IsReadWhereItHasNoExponent()
    {
        var rows = File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Decoding", "ieee488-2-numbers.csv"))
            .Where(line => !line.StartsWith('#')).Skip(1).Select(line => line.Split(',')).ToList();
        Assert.Equal(["NR1", "NR2", "NR3"], rows.Select(row => row[0]).Distinct());
        foreach (var row in rows)
        {
            var (kind, text, value) = (row[0], row[2], double.Parse(row[3], CultureInfo.InvariantCulture));
            var frame = Decode(text);
            Assert.Equal(kind == "NR3" ? FrameFault.UnknownUnit : FrameFault.None, frame.Fault);
            Assert.Equal(kind == "NR3" ? 0 : value, frame.Value);
            if (kind == "NR3")
            {
                Assert.Equal('E', text[frame.Position]);
            }
        }
    }

    private static FrameResult Decode(string line, GaugeUnit unit = GaugeUnit.Millimetre, bool inverted = false)
    {
        var pending = new ReadOnlySequence<byte>(Encoding.Latin1.GetBytes(line + "\n"));
        Assert.True(new TextLineCodec(unit, 64, inverted).TryTakeFrame(ref pending, out var frame));
        Assert.True(pending.IsEmpty);
        return frame;
    }
}
