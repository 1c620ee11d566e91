using System.Globalization;
using Handspun.Gauges.Links;
using Handspun.Gauges.Tests.Journal;

namespace Handspun.Gauges.Tests.Hid;

/// <summary>Files that stand in for the kernel's tree of HID devices, linked as the kernel links it.</summary>
/// <remarks>
/// Laid out from memory of a real tree. What it cannot show: rights (tests may run as root), reports that the kernel drops,
/// and that a real node's number moves from one plugging to the next.
/// </remarks>
internal sealed class HidTree : IDisposable
{
    private readonly TestFolder _folder = new();

    public HidTree()
    {
        Directory.CreateDirectory(Class);
        Directory.CreateDirectory(Roots.Devices);
    }

    public DeviceRoots Roots => new() { Sysfs = _folder.File("sys"), Devices = _folder.File("dev") };

    private string Class => Path.Combine(_folder.Path, "sys", "class", "hidraw");

    public string Node(string name) => Path.Combine(Roots.Devices, name);

    /// <summary>Plugs a device in.</summary>
    /// <param name="name">The name of its node.</param>
    /// <param name="id">What the kernel says of bus, vendor and product.</param>
    /// <param name="serial">Its serial number, empty where it has none.</param>
    /// <param name="descriptor">Its report descriptor; null where the kernel shows none.</param>
    /// <param name="behind">What its node leads to; null for no node.</param>
    public void Plug(string name, string id, string serial, string? descriptor = Descriptors.Gauge, string? behind = "/dev/null")
    {
        var device = Directory.CreateDirectory(Path.Combine(_folder.Path, "sys", "devices", "usb1", name + "-" + id.Replace(':', '-'))).FullName;
        var entry = Directory.CreateDirectory(Path.Combine(device, "hidraw", name)).FullName;
        Directory.CreateSymbolicLink(Path.Combine(entry, "device"), Path.GetRelativePath(entry, device));
        Directory.CreateSymbolicLink(Path.Combine(Class, name), Path.GetRelativePath(Class, entry));
        File.WriteAllText(Path.Combine(device, "uevent"), string.Create(
            CultureInfo.InvariantCulture,
            $"DRIVER=hid-generic\nHID_ID={id}\nHID_NAME=Bench gauge = {name}\nHID_PHYS=usb-0000:00:14.0-1/input0\nHID_UNIQ={serial}\nMODALIAS=hid:b0003\n"));
        if (descriptor is not null)
        {
            File.WriteAllBytes(Path.Combine(device, "report_descriptor"), Descriptors.Bytes(descriptor));
        }

        if (behind is not null)
        {
            File.CreateSymbolicLink(Node(name), behind);
        }
    }

    public void Unplug(string name)
    {
        File.Delete(Path.Combine(Class, name));
        File.Delete(Node(name));
    }

    public void Dispose() => _folder.Dispose();
}
