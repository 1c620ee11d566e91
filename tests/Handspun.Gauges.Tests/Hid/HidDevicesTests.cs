using Handspun.Gauges.Hid;
using Handspun.Gauges.Links;

namespace Handspun.Gauges.Tests.Hid;

public sealed class HidDevicesTests : IDisposable
{
    private const string Usb = "0003:000012AB:000000CD";

    private readonly HidTree _tree = new();

    private HidDevices Devices => new(_tree.Roots);

    public void Dispose() => _tree.Dispose();

    [Fact]
    public void Device_ThatIsPluggedIn_IsTold()
    {
        _tree.Plug("hidraw3", Usb, "A7");

        var device = Assert.Single(Devices.All());
        Assert.Equal(_tree.Node("hidraw3"), device.Node);
        Assert.Equal(new UsbIdentity(0x12AB, 0x00CD, "A7"), device.Identity);
        Assert.Equal("hid:12AB:00CD:A7", device.Port.ToString());
        Assert.Equal((HidBus.Usb, "Bench gauge = hidraw3", HidAccess.ReadWrite), (device.Bus, device.Name, device.Access));
        Assert.Equal(Descriptors.Bytes(Descriptors.Gauge), device.DescriptorBytes.ToArray());
        Assert.Equal(new HidUsage(0xFF00, 2), device.Descriptor!.Fields[0].Usage);
        Assert.Null(device.Sentence);
    }

    [Fact]
    public void Devices_AreInTheOrderOfTheirNumbers()
    {
        _tree.Plug("hidraw10", Usb, "");
        _tree.Plug("hidraw9", "0005:0000FFFF:00000001", "");
        _tree.Plug("hidraw0", "0018:00000001:00000002", "");

        Assert.Equal(["hidraw0", "hidraw9", "hidraw10"], Devices.All().Select(device => Path.GetFileName(device.Node)));
        Assert.Equal([HidBus.Other, HidBus.Bluetooth, HidBus.Usb], Devices.All().Select(device => device.Bus));
        Assert.All(Devices.All(), device => Assert.Null(device.Identity.Serial));
    }

    [Fact]
    public void Machine_WithoutHid_HasNone() =>
        Assert.Empty(new HidDevices(new DeviceRoots { Sysfs = _tree.Node("nowhere") }).All());

    [Theory]
    [InlineData("")]
    [InlineData("0003:12AB")]
    [InlineData("0003:000112AB:000000CD")]
    [InlineData("0003:GG:000000CD")]
    public void Entry_ThatSaysNothingOfUse_IsPassedOver(string id)
    {
        _tree.Plug("hidraw0", id, "");
        _tree.Plug("hidraw1", Usb, "");

        Assert.Equal(_tree.Node("hidraw1"), Assert.Single(Devices.All()).Node);
    }

    [Fact]
    public void Device_WithoutANode_SaysWhatToDo()
    {
        _tree.Plug("hidraw0", Usb, "", behind: null);

        var device = Assert.Single(Devices.All());
        Assert.Equal(HidAccess.Missing, device.Access);
        Assert.Equal($"There is no {_tree.Node("hidraw0")}: unplug the gauge and plug it in again.", device.Sentence);
    }

    [Fact]
    public void Device_ThatMayNotBeOpened_IsToldTheRule()
    {
        _tree.Plug("hidraw0", Usb, "");
        var device = Assert.Single(Devices.All()) with { Node = "/dev/hidraw0", Access = HidAccess.Denied };

        Assert.Contains("/dev/hidraw0 may not be opened by user", device.Sentence, StringComparison.Ordinal);
        Assert.Contains(
            "SUBSYSTEM==\"hidraw\", ATTRS{idVendor}==\"12ab\", ATTRS{idProduct}==\"00cd\", MODE=\"0660\", GROUP=\"dialout\", TAG+=\"uaccess\"",
            device.Sentence,
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("05 01 A1")]
    public void Device_WithoutADescriptorThatHolds_IsToldSo(string? descriptor)
    {
        _tree.Plug("hidraw0", Usb, "", descriptor);

        var device = Assert.Single(Devices.All());
        Assert.Null(device.Descriptor);
        Assert.Contains("no report descriptor that can be read", device.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Port_OfOneOfTwo_IsFoundByItsSerialNumber()
    {
        _tree.Plug("hidraw0", Usb, "A7");
        _tree.Plug("hidraw1", Usb, "B8");

        Assert.Equal(_tree.Node("hidraw1"), Find("hid:12AB:00CD:B8").Node);
        var refused = Assert.Throws<LinkUnavailableException>(() => Find("hid:12AB:00CD"));
        Assert.Equal(LinkFault.NotAPort, refused.Fault);
        Assert.Contains("hid:12AB:00CD:A7", refused.Message, StringComparison.Ordinal);
        Assert.Contains("hid:12AB:00CD:B8", refused.Message, StringComparison.Ordinal);
    }

    // A gauge often shows itself as a keyboard and as something of its maker's, each with a node of its own.
    [Fact]
    public void Port_OfADeviceWithTwoNodes_IsTheOneThatTheProfileSpeaksOf()
    {
        _tree.Plug("hidraw0", Usb, "A7");
        _tree.Plug("hidraw1", Usb, "A7", Descriptors.Published("hid-descriptors.json").GetProperty("boot_keyboard").GetProperty("bytes").GetString());

        Assert.Equal(_tree.Node("hidraw1"), Find("hid:12AB:00CD", new HidKeyboardFormat()).Node);
    }

    [Fact]
    public void Port_OfADeviceWithNothingOfTheKind_IsToldSo()
    {
        _tree.Plug("hidraw0", Usb, "A7");

        var refused = Assert.Throws<LinkUnavailableException>(() => Find("hid:12AB:00CD", new HidKeyboardFormat()));
        Assert.Equal(LinkFault.NotAPort, refused.Fault);
        Assert.Contains("sends nothing of what the profile's [hid] section names", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Port_OfADeviceThatIsNotThere_IsAbsent()
    {
        _tree.Plug("hidraw0", Usb, "A7");
        _tree.Unplug("hidraw0");

        var refused = Assert.Throws<LinkUnavailableException>(() => Find("hid:12AB:00CD:A7"));
        Assert.Equal(LinkFault.Absent, refused.Fault);
        Assert.Equal("No HID gauge hid:12AB:00CD:A7 is plugged in: plug it in; 'handspun gauges' lists what is there.", refused.Message);
    }

    private HidDevice Find(string port, HidFormat? format = null)
    {
        Assert.True(GaugePort.TryParse(port, out var parsed));
        return Devices.Find((GaugePort.Hid)parsed!, format);
    }
}
