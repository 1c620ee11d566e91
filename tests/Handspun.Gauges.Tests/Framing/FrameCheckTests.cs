using Handspun.Gauges.Framing;

namespace Handspun.Gauges.Tests.Framing;

public class FrameCheckTests
{
    // The check value of CRC-16/MODBUS in the CRC RevEng catalogue.
    [Fact]
    public void Crc16_OfTheNineDigits_IsTheCataloguesCheckValue() => Assert.Equal(0x4B37, Crc16.Of("123456789"u8));

    [Fact]
    public void Crc16_OfEveryPublishedFrame_IsWhatTheyCarry()
    {
        var frames = File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Decoding", "Registers", "modbus-rtu.csv"))
            .Where(line => !line.StartsWith('#')).Skip(1).Select(line => Convert.FromHexString(line.Split(',')[1].Replace(" ", "", StringComparison.Ordinal))).ToList();
        Assert.Equal(16, frames.Count);
        Assert.All(frames, frame =>
        {
            Assert.True(new FrameCheck(CheckKind.Crc16, 0, 0).Holds(frame));
            Assert.Equal(0, Crc16.Of(frame));   // the catalogue's residue
        });
    }

    // Worked out by hand: 0x10 + 0x20 + 0xF0 = 0x120; 0x10 ^ 0x20 ^ 0xF0 = 0xC0.
    [Theory]
    [InlineData(CheckKind.Sum, 0, 0, "1020F020", true)]
    [InlineData(CheckKind.Sum, 0, 0, "1020F021", false)]
    [InlineData(CheckKind.Xor, 0, 0, "1020F0C0", true)]
    [InlineData(CheckKind.Xor, 1, 0, "1020F0D0", true)]
    [InlineData(CheckKind.Sum, 1, 1, "0210200030000D", false)]
    [InlineData(CheckKind.Sum, 1, 1, "021020000D300D", false)]
    [InlineData(CheckKind.Sum, 1, 1, "02102000300D", true)]
    [InlineData(CheckKind.None, 0, 0, "", true)]
    [InlineData(CheckKind.Sum, 0, 0, "00", false)]
    [InlineData(CheckKind.Crc16, 0, 0, "0000", false)]
    public void Check_OfAFrame_HoldsWhereItsBytesAreWhole(CheckKind kind, int from, int behind, string frame, bool holds) =>
        Assert.Equal(holds, new FrameCheck(kind, from, behind).Holds(Convert.FromHexString(frame)));
}
