using System.Text;
using Handspun.Gauges.Profiles;

namespace Handspun.Gauges.Tests.Profiles;

public class RequestReaderTests
{
    [Fact]
    public void Request_ThatSaysEverything_IsReadAsItSays()
    {
        var request = ProfileReader.Read("mine", """
            [request]
            send = "R\r"
            every_ms = 20
            start = [0x02, 79, 13]
            stop = "\u0003\u00ff"
            """).Request;

        Assert.Equal("R\r", Encoding.Latin1.GetString(request.Send.Span));
        Assert.Equal(TimeSpan.FromMilliseconds(20), request.Every);
        Assert.Equal([2, 79, 13], request.Start.ToArray());
        Assert.Equal([3, 255], request.Stop.ToArray());
        Assert.True(request.OnDemand);
    }

    [Fact]
    public void Request_ThatIsNotThere_IsNone()
    {
        var request = ProfileReader.Read("mine", "").Request;

        Assert.True(request.Send.IsEmpty && request.Start.IsEmpty && request.Stop.IsEmpty);
        Assert.Null(request.Every);
        Assert.False(request.OnDemand);
    }

    [Fact]
    public void Request_WithBytesAndNoTime_IsForWhoeverAsks() =>
        Assert.Equal((true, null), (ProfileReader.Read("mine", "[request]\nsend = \"?\"").Request.OnDemand, ProfileReader.Read("mine", "[request]\nsend = \"?\"").Request.Every));

    [Theory]
    [InlineData("send = \"\"", "'request.send'", "1 to 256 bytes")]
    [InlineData("send = []", "'request.send'", "1 to 256 bytes")]
    [InlineData("send = [256]", "'request.send'", "1 to 256 bytes")]
    [InlineData("send = [-1]", "'request.send'", "1 to 256 bytes")]
    [InlineData("send = [\"R\"]", "'request.send'", "1 to 256 bytes")]
    [InlineData("send = \"\\u0416\"", "'request.send'", "1 to 256 bytes")]
    [InlineData("start = 5", "'request.start'", "1 to 256 bytes")]
    [InlineData("send = \"R\"\nevery_ms = 60001", "'request.every_ms'", "from 1 to 60000")]
    [InlineData("every_ms = 20", "'request.every_ms'", "there is no 'send'")]
    [InlineData("period = 20", "'request.period'", "every_ms, send, start, stop")]
    public void Request_WithAWrongKeyOrValue_NamesTheKeyAndWhatIsAllowed(string toml, string key, string allowed)
    {
        var problem = Assert.Single(Assert.Throws<ProfileException>(() => ProfileReader.Read("mine", "[request]\n" + toml)).Problems);
        Assert.Contains(key, problem, StringComparison.Ordinal);
        Assert.Contains(allowed, problem, StringComparison.Ordinal);
    }
}
