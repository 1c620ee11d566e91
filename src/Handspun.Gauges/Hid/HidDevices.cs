using System.Globalization;
using Handspun.Gauges.Links;

namespace Handspun.Gauges.Hid;

/// <summary>The HID devices that are plugged in now, as the Linux kernel shows them below <c>class/hidraw</c>.</summary>
public sealed class HidDevices(DeviceRoots roots)
{
    /// <summary>All of them, in the order of their nodes. None where the kernel shows none, and on other systems.</summary>
    public IReadOnlyList<HidDevice> All()
    {
        var folder = Path.Combine(roots.Sysfs, "class", "hidraw");
        return Directory.Exists(folder)
            ? [.. Directory.EnumerateFileSystemEntries(folder).Select(Path.GetFileName).OrderBy(name => name!.Length).ThenBy(name => name, StringComparer.Ordinal).Select(name => Read(name!)).OfType<HidDevice>()]
            : [];
    }

    /// <summary>The device that a port names.</summary>
    /// <param name="port">The port.</param>
    /// <param name="format">What the profile looks for: of a device that shows itself more than once, the one that has it is meant.</param>
    /// <exception cref="LinkUnavailableException">There is none, or more than one, or it has nothing of what the profile looks for.</exception>
    public HidDevice Find(GaugePort.Hid port, HidFormat? format)
    {
        if (!OperatingSystem.IsLinux())
        {
            throw new LinkUnavailableException(LinkFault.NotAPort, HidSentence.LinuxOnly);
        }

        var there = All().Where(device => port.Identity.Fits(device.Identity)).ToList();
        var suited = format is null ? there : there.Where(device => device.Descriptor is null || format.Suits(device.Descriptor)).ToList();
        return (suited.Count, there.Count) switch
        {
            (1, _) => suited[0],
            (0, 0) => throw new LinkUnavailableException(LinkFault.Absent, HidSentence.Absent(port)),
            (0, _) => throw new LinkUnavailableException(LinkFault.NotAPort, HidSentence.Unsuited(there[0])),
            _ => throw new LinkUnavailableException(LinkFault.NotAPort, HidSentence.Ambiguous(port, suited)),
        };
    }

    /// <summary>What the kernel says of the device that has a node now; null where it says nothing.</summary>
    public HidDevice? At(string node) => Read(Path.GetFileName(node)) is { } device ? device with { Node = node } : null;

    private HidDevice? Read(string name)
    {
        var folder = Path.Combine(roots.Sysfs, "class", "hidraw", name, "device");
        try
        {
            var said = File.ReadLines(Path.Combine(folder, "uevent"))
                .Select(line => line.Split('=', 2)).Where(pair => pair.Length == 2)
                .ToLookup(pair => pair[0], pair => pair[1].Trim(), StringComparer.Ordinal);
            string Said(string key) => said[key].FirstOrDefault() ?? "";
            return TryReadId(Said("HID_ID"), out var bus, out var vendor, out var product)
                ? Describe(Path.Combine(roots.Devices, name), new(vendor, product, Said("HID_UNIQ") is { Length: > 0 } serial ? serial : null), bus, Said("HID_NAME"), BytesOf(folder))
                : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;   // it was pulled out while it was looked at
        }
    }

    private static HidDevice Describe(string node, UsbIdentity identity, HidBus bus, string name, byte[] bytes)
    {
        var holds = ReportDescriptor.TryParse(bytes, out var descriptor, out var fault) && bytes.Length > 0;
        return new()
        {
            Node = node,
            Identity = identity,
            Bus = bus,
            Name = name,
            DescriptorBytes = bytes,
            Descriptor = holds ? descriptor : null,
            DescriptorFault = fault,
            Access = HidrawCalls.AccessTo(node),
        };
    }

    private static byte[] BytesOf(string folder)
    {
        try
        {
            return File.ReadAllBytes(Path.Combine(folder, "report_descriptor"));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    // Bus, vendor and product in hexadecimal digits, such as 0003:00001234:00005678 (from memory of the Linux kernel's HID core).
    private static bool TryReadId(string id, out HidBus bus, out ushort vendor, out ushort product)
    {
        bus = id.Split(':')[0] switch { "0003" => HidBus.Usb, "0005" => HidBus.Bluetooth, _ => HidBus.Other };
        (vendor, product) = (0, 0);
        return id.Split(':') is [_, var first, var second]
            && ushort.TryParse(first.TrimStart('0').PadLeft(1, '0'), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out vendor)
            && ushort.TryParse(second.TrimStart('0').PadLeft(1, '0'), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out product);
    }
}
