using System.Text;
using Handspun.Gauges.Decoding;
using Handspun.Gauges.Decoding.Text;
using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Tests.Decoding.Text;

public class TextColumnsDecodingTests
{
    private static readonly TextColumnsDecoding Columns = new(
        new() { Units = new(["M"], ["I"]), Tokens = new([new("B", GaugeFlags.BatteryLow, false), new("O", GaugeFlags.Overrange, false)]) },
        new() { Sign = new(2, 1), Value = new(3, 8), Unit = new(11, 1), Flag = new(12, 1) });

    [Theory]
    [InlineData("01+0000.845M ", 0.845, GaugeUnit.Millimetre, GaugeFlags.None)]
    [InlineData("01-00.00310I ", -0.0031, GaugeUnit.Inch, GaugeFlags.None)]
    [InlineData("01    1.5  MB", 1.5, GaugeUnit.Millimetre, GaugeFlags.BatteryLow)]
    [InlineData("01-0000.845m and more", -0.845, GaugeUnit.Millimetre, GaugeFlags.None)]
    [InlineData("01+0000.845MO", 0.845, GaugeUnit.Millimetre, GaugeFlags.Overrange)]
    public void Columns_WithWhatBelongsInThem_AreRead(string frame, double value, GaugeUnit unit, GaugeFlags flags) =>
        Assert.Equal(FrameResult.Of(value, unit, flags), Columns.Decode(Encoding.Latin1.GetBytes(frame)));

    [Theory]
    [InlineData("01+0000.845M", FrameFault.TooShort)]
    [InlineData("01*0000.845M ", FrameFault.NotANumber)]
    [InlineData("01+0000,845M ", FrameFault.NotANumber)]
    [InlineData("01+00 0.845M ", FrameFault.NotANumber)]
    [InlineData("01+        M ", FrameFault.NotANumber)]
    [InlineData("01+0000.845X ", FrameFault.UnknownUnit)]
    [InlineData("1+0000.845M   ", FrameFault.UnknownUnit)]   // one letter was lost: never a tenth of the value
    public void Columns_WithAnythingElse_AreRejected(string frame, FrameFault fault) =>
        Assert.Equal(fault, Columns.Decode(Encoding.Latin1.GetBytes(frame)).Fault);

    [Fact]
    public void Overrange_WithoutDigits_IsAStateAndNoFault() =>
        Assert.Equal(FrameResult.Without(GaugeFlags.Overrange), Columns.Decode("01+--------MO"u8));
}
