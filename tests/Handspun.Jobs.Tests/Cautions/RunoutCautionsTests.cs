using Handspun.Jobs.Cautions;

namespace Handspun.Jobs.Tests.Cautions;

public class RunoutCautionsTests
{
    // Common practice, no source.
    [Theory]
    [InlineData("service manual")]
    [InlineData("lift")]
    [InlineData("clear of the floor")]
    [InlineData("spark plugs are out")]
    [InlineData("ignition is off")]
    [InlineData("battery is disconnected")]
    [InlineData("clear of chain, belt and sprockets")]
    [InlineData("by hand only")]
    public void Cautions_BeforeAShaftIsTurned_NameWhatHurts(string what) =>
        Assert.Single(RunoutCautions.Sentences, sentence => sentence.Contains(what, StringComparison.Ordinal));

    [Fact]
    public void Cautions_AreSentences() => Assert.All(RunoutCautions.Sentences, sentence => Assert.Matches("^[A-Z].*\\.$", sentence));
}
