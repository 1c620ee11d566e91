using System.Net;
using Handspun.Station;

namespace Handspun.Tests.Station;

public sealed class HttpAddressTests
{
    [Theory]
    [InlineData("http://127.0.0.1:5080", "127.0.0.1", 5080)]
    [InlineData("http://localhost:0/", "127.0.0.1", 0)]
    [InlineData("http://[::1]:8080", "::1", 8080)]
    [InlineData("http://127.0.0.1", "127.0.0.1", 80)]
    public void Parse_OfALoopbackAddress_GivesItsEndPoint(string text, string address, int port) =>
        Assert.Equal(new IPEndPoint(IPAddress.Parse(address), port), HttpAddress.Parse(text));

    [Theory]
    [InlineData("127.0.0.1:5080", "is no address")]
    [InlineData("https://127.0.0.1:5080", "is no address")]
    [InlineData("http://127.0.0.1:5080/path", "is no address")]
    [InlineData("http://0.0.0.0:5080", "loopback")]
    [InlineData("http://192.168.1.5:5080", "loopback")]
    [InlineData("http://bench.example:5080", "loopback")]
    [InlineData("http://192.168.1.5:5080", "--screens")]
    public void Parse_OfAnythingElse_SaysWhatToGive(string text, string words) =>
        Assert.Contains(words, Assert.Throws<StationTroubleException>(() => HttpAddress.Parse(text)).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("http://192.0.2.20:5080", "192.0.2.20", 5080)]
    [InlineData("http://[2001:db8::20]:5080/", "2001:db8::20", 5080)]
    [InlineData("http://127.0.0.2:0", "127.0.0.2", 0)]
    public void ParseScreens_OfOneAddress_GivesItsEndPoint(string text, string address, int port) =>
        Assert.Equal(new IPEndPoint(IPAddress.Parse(address), port), HttpAddress.ParseScreens(text));

    [Theory]
    [InlineData("192.0.2.20", "is no address")]
    [InlineData("https://192.0.2.20:5080", "is no address")]
    [InlineData("http://0.0.0.0:5080", "no one address")]
    [InlineData("http://[::]:5080", "no one address")]
    [InlineData("http://bench.example:5080", "in digits")]
    public void ParseScreens_OfAnythingElse_SaysWhatToGive(string text, string words) =>
        Assert.Contains(words, Assert.Throws<StationTroubleException>(() => HttpAddress.ParseScreens(text)).Message, StringComparison.Ordinal);
}
