using Handspun.Gauges.Links;

namespace Handspun.Gauges.Tests.Links;

public class GaugePortTests
{
    [Theory]
    [InlineData("/dev/ttyUSB0")]
    [InlineData("/dev/serial/by-id/usb-gauge:1")]
    [InlineData("COM3")]
    [InlineData(@"\\.\COM12")]
    public void Port_OfADevice_IsSerial(string text)
    {
        Assert.True(GaugePort.TryParse(text, out var port));
        Assert.Equal(new GaugePort.Serial(text), port);
        Assert.Equal(text, port!.ToString());
    }

    [Theory]
    [InlineData("tcp://adapter:4001", "adapter", 4001, "tcp://adapter:4001")]
    [InlineData("TCP://bay-2.shop.lan:65535/", "bay-2.shop.lan", 65535, "tcp://bay-2.shop.lan:65535")]
    [InlineData("tcp://127.0.0.1:1", "127.0.0.1", 1, "tcp://127.0.0.1:1")]
    [InlineData("tcp://[::1]:4001", "::1", 4001, "tcp://[::1]:4001")]
    public void Port_OfAnAddress_IsTcp_AndWrittenAsItIsRead(string text, string host, int number, string written)
    {
        Assert.True(GaugePort.TryParse(text, out var port));
        Assert.Equal(new GaugePort.Tcp(host, number), port);
        Assert.Equal(written, port!.ToString());
        Assert.True(GaugePort.TryParse(written, out var again));
        Assert.Equal(port, again);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("  ")]
    [InlineData("tcp://")]
    [InlineData("tcp://adapter")]
    [InlineData("tcp://adapter:")]
    [InlineData("tcp://adapter:0")]
    [InlineData("tcp://adapter:65536")]
    [InlineData("tcp://adapter:+1")]
    [InlineData("tcp://adapter: 1")]
    [InlineData("tcp://:4001")]
    [InlineData("tcp://[]:4001")]
    [InlineData("tcp://two words:4001")]
    [InlineData("tcp://::1")]
    [InlineData("tcp://fe80::1:4001")]   // without brackets nobody can tell where the address ends
    [InlineData("udp://adapter:4001")]
    [InlineData("http://adapter:4001")]
    public void Port_OfAnythingElse_IsNone(string? text)
    {
        Assert.False(GaugePort.TryParse(text, out var port));
        Assert.Null(port);
    }
}
