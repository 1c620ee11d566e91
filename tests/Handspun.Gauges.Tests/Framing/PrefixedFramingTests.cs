using Handspun.Gauges.Framing;

namespace Handspun.Gauges.Tests.Framing;

public class PrefixedFramingTests
{
    [Fact]
    public void Frames_OfManyLengths_CutAtEveryByte_AreTheSame() =>
        Assert.All(Framings.Cuts("<\u0003abc!<\u0001z!<\u0000!"), pieces =>
            Assert.Equal(["<\u0003abc!", "<\u0001z!", "<\u0000!"], Framings.Found(new PrefixedFraming("<"u8.ToArray(), countAt: 1, adds: 3, longest: 16), pieces, out _)));

    [Theory]
    [InlineData("<\u00ff")]   // longer than any
    [InlineData("xyz")]
    public void Frame_ThatCannotBe_IsPassedOver(string noise) =>
        Assert.Equal(["[Lost]", "<\u0001z!"], Framings.Found(new PrefixedFraming("<"u8.ToArray(), 1, 3, 16), noise + "<\u0001z!").Where((word, at) => word != "[Lost]" || at == 0));

    [Fact]
    public void Count_ThatDoesNotReachItself_IsNone() =>
        Assert.Equal(["[Lost]"], Framings.Found(new PrefixedFraming(default, countAt: 3, adds: 0, longest: 16), "abc\u0003").Take(1));
}
