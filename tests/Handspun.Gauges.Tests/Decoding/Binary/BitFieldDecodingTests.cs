using System.Numerics;
using CsCheck;
using Handspun.Gauges.Decoding;
using Handspun.Gauges.Decoding.Binary;
using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Tests.Decoding.Binary;

public class BitFieldDecodingTests
{
    // The library's whole numbers of any size, shifted and masked, are the judge.
    [Fact]
    public void Field_AnywhereInAFrame_IsTheNumberThatLiesThere() => Gen.Select(
        Gen.Byte.Array[6, 12], Gen.Int[0, 15], Gen.Int[1, 32], Gen.Bool, Gen.Bool)
        .Sample((frame, from, width, lowFirst, signed) =>
        {
            var all = new BigInteger(frame, isUnsigned: true, isBigEndian: !lowFirst);
            var down = lowFirst ? from : 8 * frame.Length - from - width;
            var expected = all >> down & (BigInteger.One << width) - 1;
            expected -= signed && !(expected >> width - 1).IsZero ? BigInteger.One << width : 0;
            var field = new BitField { Order = lowFirst ? BitOrder.LowFirst : BitOrder.HighFirst, From = from, Width = width, Sign = signed ? SignRule.TwosComplement : SignRule.None };

            Assert.Equal((double)expected, new BitFieldDecoding(field, new([], field.Order)).Decode(frame).Value);
        });

    [Theory]
    [InlineData("4D0310", -845, null, GaugeFlags.None)]
    [InlineData("4D0300", 845, null, GaugeFlags.None)]
    [InlineData("4D0340", 845, null, GaugeFlags.BatteryLow)]
    public void Sign_InABitOfItsOwn_AndAFlag_AreRead(string frame, double value, GaugeUnit? unit, GaugeFlags flags) =>
        Assert.Equal(FrameResult.Of(value, unit, flags), new BitFieldDecoding(
            new() { From = 0, Width = 20, Sign = SignRule.Bit, SignAt = 20 },
            new([new(22, GaugeFlags.BatteryLow, false)], BitOrder.LowFirst)).Decode(Convert.FromHexString(frame)));

    [Theory]
    [InlineData(GaugeUnit.Inch, "80", GaugeUnit.Inch)]
    [InlineData(GaugeUnit.Inch, "00", GaugeUnit.Millimetre)]
    [InlineData(GaugeUnit.Millimetre, "80", GaugeUnit.Millimetre)]
    [InlineData(GaugeUnit.Millimetre, "00", GaugeUnit.Inch)]
    public void UnitBit_SetOrNot_TellsTheUnit(GaugeUnit whenSet, string frame, GaugeUnit unit) =>
        Assert.Equal(unit, new BitFieldDecoding(new() { From = 0, Width = 4, Unit = new(7, whenSet) }, new([], BitOrder.LowFirst)).Decode(Convert.FromHexString(frame)).Unit);

    [Fact]
    public void IndexBit_ThatStaysSet_IsOnePulse()
    {
        var decoding = new BitFieldDecoding(new() { From = 0, Width = 4 }, new([new(7, GaugeFlags.None, true)], BitOrder.LowFirst));
        byte[][] frames = [[0], [0x80], [0x81], [0x01], [0x80]];

        Assert.Equal([false, true, false, false, true], frames.Select(frame => decoding.Decode(frame).IsIndex));
    }

    [Fact]
    public void Frame_TooShortForItsField_IsRejected() =>
        Assert.Equal(FrameResult.Rejected(FrameFault.TooShort, 2), new BitFieldDecoding(new() { From = 0, Width = 17 }, new([], BitOrder.LowFirst)).Decode([1, 2]));
}
