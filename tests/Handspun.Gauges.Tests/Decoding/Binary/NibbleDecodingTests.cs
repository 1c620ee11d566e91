using Handspun.Gauges.Decoding;
using Handspun.Gauges.Decoding.Binary;
using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Tests.Decoding.Binary;

/// <summary>No open standard stands behind such frames: what they mean follows from the layout, by hand.</summary>
public class NibbleDecodingTests
{
    private static readonly NibbleLayout Layout = new() { Digits = [2, 3, 4, 5], SignAt = 0, UnitAt = 1, PointAt = 6 };

    [Theory]
    [InlineData(NibblePacking.HighFirst, "00124530", 1.245, GaugeUnit.Millimetre)]
    [InlineData(NibblePacking.HighFirst, "81124540", -0.1245, GaugeUnit.Inch)]
    [InlineData(NibblePacking.LowFirst, "18214504", -2154, GaugeUnit.Inch)]
    [InlineData(NibblePacking.OneEach, "08000102040503", -1.245, GaugeUnit.Millimetre)]
    [InlineData(NibblePacking.HexDigit, "30313132343533", 1.245, GaugeUnit.Inch)]
    public void Digits_InAnyPacking_AreTheNumber(NibblePacking packing, string frame, double value, GaugeUnit unit)
    {
        var layout = Layout with { Packing = packing };
        layout = packing == NibblePacking.LowFirst ? layout with { SignAt = 0, UnitAt = 1, Digits = [3, 2, 4, 5], PointAt = 7 } : layout;

        Assert.Equal(FrameResult.Of(value, unit), new NibbleDecoding(layout, new([], BitOrder.LowFirst)).Decode(Convert.FromHexString(frame)));
    }

    [Theory]
    [InlineData("00A24530", FrameFault.NotANumber, 1)]
    [InlineData("0012F530", FrameFault.NotANumber, 2)]
    [InlineData("40124530", FrameFault.NotANumber, 0)]
    [InlineData("00124550", FrameFault.NotANumber, 3)]   // five digits behind the point of four
    [InlineData("02124530", FrameFault.UnknownUnit, 0)]
    [InlineData("001245", FrameFault.TooShort, 3)]
    public void Nibble_ThatMeansNothing_RejectsTheFrameAtItsByte(string frame, FrameFault fault, int position) =>
        Assert.Equal(FrameResult.Rejected(fault, position), new NibbleDecoding(Layout, new([], BitOrder.LowFirst)).Decode(Convert.FromHexString(frame)));

    [Fact]
    public void Overrange_WithDigitsThatAreNone_IsAState() =>
        Assert.Equal(FrameResult.Without(GaugeFlags.Overrange), new NibbleDecoding(Layout, new([new(24, GaugeFlags.Overrange, false)], BitOrder.LowFirst)).Decode(Convert.FromHexString("00FFFF31")));
}
