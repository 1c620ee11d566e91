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
    public void Parse_OfAnythingElse_SaysWhatToGive(string text, string words) =>
        Assert.Contains(words, Assert.Throws<StationTroubleException>(() => HttpAddress.Parse(text)).Message, StringComparison.Ordinal);
}
