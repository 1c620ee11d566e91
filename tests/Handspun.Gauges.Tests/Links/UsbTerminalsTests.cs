using Handspun.Gauges.Links;

namespace Handspun.Gauges.Tests.Links;

public sealed class UsbTerminalsTests : IDisposable
{
    private static readonly UsbIdentity Left = new(0x1209, 0xF00D, "A1:2");

    private readonly UsbTree _tree = new();

    public void Dispose() => _tree.Dispose();

    [Fact]
    public void Terminals_AreListedWithWhatTheyAre_AndVirtualOnesAreNot()
    {
        _tree.AddVirtual("tty0");
        _tree.PlugConverter("ttyUSB0", "1-4", "1209", "f00d", "A1:2", "Bench converter");
        _tree.PlugModem("ttyACM0", "1-2.3", "1209", "0001", null);

        Assert.Equal(
            [new(Node("ttyACM0"), new UsbIdentity(0x1209, 1), "Gauge"), new(Node("ttyUSB0"), Left, "Bench converter")],
            new UsbTerminals(_tree.Roots).All());
    }

    [Fact]
    public void Identity_LeadsToTheDeviceOfTheMoment_AlsoAfterReplugging()
    {
        var terminals = new UsbTerminals(_tree.Roots);
        _tree.PlugConverter("ttyUSB0", "1-4", "1209", "f00d", "A1:2");
        _tree.PlugConverter("ttyUSB1", "1-5", "1209", "f00d", "B7");
        Assert.Equal(Node("ttyUSB0"), terminals.Find(Left));

        _tree.Unplug("ttyUSB0", "1-4");
        Assert.Equal(LinkFault.Absent, Assert.Throws<LinkUnavailableException>(() => terminals.Find(Left)).Fault);
        _tree.PlugConverter("ttyUSB2", "2-1", "1209", "f00d", "A1:2");
        Assert.Equal(Node("ttyUSB2"), terminals.Find(Left));
    }

    [Fact]
    public void Identity_ThatFitsTwoDevices_IsRefused_AndBothAreNamed()
    {
        _tree.PlugConverter("ttyUSB0", "1-4", "1209", "f00d", "A1:2");
        _tree.PlugConverter("ttyUSB1", "1-5", "1209", "f00d", null);

        var refused = Assert.Throws<LinkUnavailableException>(() => new UsbTerminals(_tree.Roots).Find(new UsbIdentity(0x1209, 0xF00D)));
        Assert.Equal(
            $"usb:1209:F00D fits {Node("ttyUSB0")} (usb:1209:F00D:A1:2) and {Node("ttyUSB1")} (usb:1209:F00D): give the serial number too, or the port by its name.",
            refused.Message);
    }

    [Fact]
    public async Task Opening_ByIdentity_OpensTheDeviceThatIsThereAtThatMoment()
    {
        await using var pair = await PairedTerminals.OpenAsync();
        var opener = new LinkOpener(TimeProvider.System, _tree.Roots);
        var port = new GaugePort.Usb(Left);
        await Assert.ThrowsAsync<LinkUnavailableException>(() => opener.OpenAsync(port, new LinkSettings(), CancellationToken.None));

        _tree.PlugConverter("ttyUSB5", "1-4", "1209", "f00d", "A1:2");
        Directory.CreateDirectory(_tree.Roots.Devices);
        File.CreateSymbolicLink(Node("ttyUSB5"), pair.Station);
        await using var link = await opener.OpenAsync(port, new LinkSettings(), CancellationToken.None);
        await pair.SendAsync(["+0.1\n"u8.ToArray()]);
        Assert.Equal("+0.1\n"u8.ToArray(), await LinkReading.BytesAsync(link, 5));
    }

    [Fact]
    public void Tree_ThatIsNotThere_HasNoTerminals() => Assert.Empty(new UsbTerminals(new DeviceRoots { Sysfs = _tree.Roots.Devices }).All());

    private string Node(string tty) => Path.Combine(_tree.Roots.Devices, tty);
}
