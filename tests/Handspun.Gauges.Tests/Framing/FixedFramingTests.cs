using Handspun.Gauges.Framing;

namespace Handspun.Gauges.Tests.Framing;

public class FixedFramingTests
{
    [Fact]
    public void Frames_BetweenStartAndEnd_CutAtEveryByte_AreFoundBehindNoise() =>
        Assert.All(Framings.Cuts("x<<y<a12>>b34>"), pieces =>
        {
            var found = Framings.Found(new FixedFraming(5, "<"u8.ToArray(), ">"u8.ToArray(), resyncs: true), pieces, out var pending);
            Assert.Equal(["[Lost]", "<a12>"], found.Where((word, at) => word != "[Lost]" || at == 0).Take(2));
            Assert.Equal(0, pending);
        });

    [Fact]
    public void Frames_WithoutStartAndEnd_AreCutByTheirLength()
    {
        Assert.All(Framings.Cuts("abcdefghi"), pieces => Assert.Equal(["abc", "def", "ghi"], Framings.Found(new FixedFraming(3, default, default, resyncs: false), pieces, out _)));
        Framings.Found(new FixedFraming(3, default, default, resyncs: false), [[1, 2, 3, 4]], out var pending);
        Assert.Equal(1, pending);
    }

    [Fact]
    public void StartOfTwoBytes_CutBetweenThem_IsFound() =>
        Assert.All(Framings.Cuts("<[ab<[cd"), pieces => Assert.Equal(["<[ab", "<[cd"], Framings.Found(new FixedFraming(4, "<["u8.ToArray(), default, resyncs: false), pieces, out _)));

    [Fact]
    public void Megabyte_WithoutAStart_HoldsNothing()
    {
        var found = Framings.Found(new FixedFraming(5, "<"u8.ToArray(), default, resyncs: false), Enumerable.Repeat(new byte[1000], 1000), out var pending);
        Assert.All(found, word => Assert.Equal("[Lost]", word));
        Assert.Equal(0, pending);
    }
}
