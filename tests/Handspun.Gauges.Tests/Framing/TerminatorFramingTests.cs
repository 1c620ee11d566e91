using System.Text;
using Handspun.Gauges.Framing;

namespace Handspun.Gauges.Tests.Framing;

public class TerminatorFramingTests
{
    private static readonly byte[] End = "\u0003\r"u8.ToArray();

    [Fact]
    public void Frames_CutAtEveryByte_AreTheSame_AndEmptyOnesArePassedOver() =>
        Assert.All(Framings.Cuts("one\u0003\r\u0003\rtw\ro\u0003\u0003\r"), pieces =>
            Assert.Equal(["one", "tw\ro\u0003"], Framings.Found(new TerminatorFraming(End, 12), pieces, out _)));

    [Fact]
    public void Frame_OfJustTheLongest_IsWhole_AndOneByteMoreIsToldOnce()
    {
        Assert.All(Framings.Cuts("123456789012\u0003\rtwo\u0003\r"), pieces =>
            Assert.Equal(["123456789012", "two"], Framings.Found(new TerminatorFraming(End, 12), pieces, out _)));
        Assert.All(Framings.Cuts("1234567890123\u0003\rtwo\u0003\r"), pieces =>
            Assert.Equal(["[TooLong]", "two"], Framings.Found(new TerminatorFraming(End, 12), pieces, out _)));
    }

    [Fact]
    public void Megabyte_WithoutAnEnd_IsToldOnce_AndHoldsNothing()
    {
        var pieces = Enumerable.Repeat(Encoding.ASCII.GetBytes(new string('7', 1000)), 1000).Append("\u0003\rtwo\u0003\r"u8.ToArray());
        Assert.Equal(["[TooLong]", "two"], Framings.Found(new TerminatorFraming(End, 12), pieces, out var pending));
        Assert.Equal(0, pending);
    }
}
