using Handspun.Gauges.Links;

namespace Handspun.Gauges.Tests.Links;

public class GaugePortTests
{
    [Theory]
    [InlineData("/dev/ttyUSB0")]
    [InlineData("/dev/serial/by-id/usb-gauge:1")]
    [InlineData("COM3")]
    [InlineData(@"\\.\COM12")]
    [InlineData("/dev/hidraw")]
    [InlineData("/dev/hidraw0x")]
    [InlineData("hidraw0")]
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
    [InlineData("usb:1209:f00d", "usb:1209:F00D")]
    [InlineData("USB:1209:F00D:A1:2", "usb:1209:F00D:A1:2")]
    [InlineData("replay:/records/a b.jsonl", "replay:/records/a b.jsonl")]
    [InlineData("replay:C:\\records\\a.jsonl.gz", "replay:C:\\records\\a.jsonl.gz")]
    [InlineData("replay:x4:a.jsonl", "replay:x4:a.jsonl")]
    [InlineData("replay:x0.5:a.jsonl", "replay:x0.5:a.jsonl")]
    [InlineData("replay:x1:a.jsonl", "replay:a.jsonl")]
    [InlineData("replay:at-once:a.jsonl", "replay:at-once:a.jsonl")]
    public void Port_OfAUsbDeviceOrAReplay_IsWrittenAsItIsRead(string text, string written)
    {
        Assert.True(GaugePort.TryParse(text, out var port));
        Assert.Equal(written, port!.ToString());
        Assert.True(GaugePort.TryParse(written, out var again));
        Assert.Equal(port, again);
    }

    [Theory]
    [InlineData("hid:12ab:00CD", 0x12AB, 0x00CD, null, "hid:12AB:00CD")]
    [InlineData("HID:ffff:0000:A 7:2", 0xFFFF, 0, "A 7:2", "hid:FFFF:0000:A 7:2")]
    public void Port_OfAUsbIdentity_IsHid_AndWrittenAsItIsRead(string text, int vendor, int product, string? serial, string written)
    {
        Assert.True(GaugePort.TryParse(text, out var port));
        Assert.Equal(new GaugePort.Hid(new UsbIdentity((ushort)vendor, (ushort)product, serial)), port);
        Assert.Equal(written, port!.ToString());
        Assert.True(GaugePort.TryParse(written, out var again));
        Assert.Equal(port, again);
    }

    [Theory]
    [InlineData("/dev/hidraw0")]
    [InlineData("/tmp/stand-in/hidraw12")]
    public void Port_OfAHidNode_IsThatNode(string text)
    {
        Assert.True(GaugePort.TryParse(text, out var port));
        Assert.Equal(new GaugePort.HidNode(text), port);
        Assert.Equal(text, port!.ToString());
    }

    [Theory]
    [InlineData("replay:a.jsonl", 8, 8)]
    [InlineData("replay:x4:a.jsonl", 8, 2)]
    [InlineData("replay:x0.5:a.jsonl", 8, 16)]
    [InlineData("replay:at-once:a.jsonl", 8, 0)]
    public void Replay_TakesTheTimeThatItsPaceSays(string text, double seconds, double taken)
    {
        Assert.True(GaugePort.TryParse(text, out var port));
        Assert.Equal(TimeSpan.FromSeconds(taken), Assert.IsType<GaugePort.Replay>(port).Pace.Take(TimeSpan.FromSeconds(seconds)));
    }

    [Theory]
    [InlineData("usb:1209")]
    [InlineData("usb:1209:F00D:")]
    [InlineData("usb:12:F00D")]
    [InlineData("replay:")]
    [InlineData("replay:x0:a.jsonl")]
    [InlineData("replay:x1001:a.jsonl")]
    [InlineData("replay:x4:")]
    [InlineData("replay:at-once:")]
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
    [InlineData("hid:")]
    [InlineData("hid:12AB")]
    [InlineData("hid:12AB:")]
    [InlineData("hid:12AB:CD")]
    [InlineData("hid:12AB:00CDE")]
    [InlineData("hid:12AB:00CD:")]
    [InlineData("hid:12AB:00CD: ")]
    [InlineData("hid:+2AB:00CD")]
    [InlineData("hid: 2AB:00CD")]
    [InlineData("hid:12GB:00CD")]
    [InlineData("udp://adapter:4001")]
    [InlineData("http://adapter:4001")]
    public void Port_OfAnythingElse_IsNone(string? text)
    {
        Assert.False(GaugePort.TryParse(text, out var port));
        Assert.Null(port);
    }
}
