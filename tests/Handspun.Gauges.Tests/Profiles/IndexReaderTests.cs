using Handspun.Gauges.Profiles;

namespace Handspun.Gauges.Tests.Profiles;

public class IndexReaderTests
{
    [Fact]
    public void Index_OnALine_IsReadAsItSays() => Assert.Equal(
        new IndexSettings { Source = IndexSource.Line, Line = ModemLine.Dcd, Falling = true, Debounce = TimeSpan.FromMilliseconds(30), Turns = 3.375 },
        Read("source = \"line\"\nline = \"dcd\"\nedge = \"falling\"\ndebounce_ms = 30\nturns = 3.375"));

    [Theory]
    [InlineData("token", IndexSource.Token, true)]
    [InlineData("hid-button", IndexSource.HidButton, true)]
    [InlineData("key", IndexSource.Key, false)]
    [InlineData("mqtt", IndexSource.Mqtt, false)]
    [InlineData("line", IndexSource.Line, false)]
    public void Index_ThatSaysOnlyItsSource_StandsForOneTurn(string name, IndexSource source, bool inTheBytes)
    {
        const string button = "\n[hid]\nkind = \"report\"\nusage_page = 1\nusage = 54\n[flags]\nindex = 1";
        const string token = "\n[flags]\nindex = \"Z\"";
        var index = Read($"source = \"{name}\"{(source == IndexSource.HidButton ? button : source == IndexSource.Token ? token : "")}");

        Assert.Equal(new IndexSettings { Source = source }, index);
        Assert.Equal(inTheBytes, index!.IsInTheBytes);
    }

    [Fact]
    public void Index_ThatIsNotThere_IsNone() => Assert.Null(ProfileReader.Read("mine", "").Index);

    [Theory]
    [InlineData("source = \"token\"", "'index.source'", "write [flags] with index")]
    [InlineData("turns = 2", "'index.source'", "hid-button, key, line, mqtt, token")]
    [InlineData("source = \"wire\"", "'index.source'", "is one of")]
    [InlineData("source = \"key\"\nline = \"cts\"", "'index.line'", "leave it out")]
    [InlineData("source = \"mqtt\"\nedge = \"rising\"", "'index.edge'", "leave it out")]
    [InlineData("source = \"line\"\nline = \"rts\"", "'index.line'", "cts, dsr, dcd, ri")]
    [InlineData("source = \"line\"\nline = \"ri\"\nedge = \"falling\"", "'index.edge'", "only that it rang")]
    [InlineData("source = \"key\"\ndebounce_ms = 1001", "'index.debounce_ms'", "from 0 to 1000")]
    [InlineData("source = \"key\"\nturns = 0", "'index.turns'", "from 0.01 to 100")]
    [InlineData("source = \"key\"\nangle = 3", "'index.angle'", "debounce_ms, edge, line, source, turns")]
    public void Index_WithAWrongKeyOrValue_NamesTheKeyAndWhatIsAllowed(string toml, string key, string allowed)
    {
        var problem = Assert.Single(Assert.Throws<ProfileException>(() => Read(toml)).Problems);
        Assert.Contains(key, problem, StringComparison.Ordinal);
        Assert.Contains(allowed, problem, StringComparison.Ordinal);
    }

    private static IndexSettings? Read(string toml) => ProfileReader.Read("mine", "[index]\n" + toml).Index;
}
