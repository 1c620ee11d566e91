using System.IO.Ports;
using Handspun.Gauges.Hid;
using Handspun.Gauges.Links;

namespace Handspun.Gauges.Finding;

/// <summary>All that is plugged in and may be a gauge: serial devices first, then HID devices. Nothing is opened.</summary>
public sealed class PluggedPorts(DeviceRoots roots)
{
    /// <summary>What is there now.</summary>
    public IReadOnlyList<PluggedPort> All()
    {
        var holders = new PortHolders(roots).All();
        return [.. Serial().Concat(new HidDevices(roots).All().Select(Describe)).Select(port => Held(port, [.. holders[port.Device]]))];
    }

    private IEnumerable<PluggedPort> Serial()
    {
        if (!OperatingSystem.IsLinux())
        {
            return SerialPort.GetPortNames().Order(StringComparer.OrdinalIgnoreCase).Select(name => new PluggedPort { Device = name, Port = new GaugePort.Serial(name) });
        }

        var onUsb = new UsbTerminals(roots).All();
        var several = onUsb.CountBy(terminal => terminal.Identity).Where(count => count.Value > 1).Select(count => count.Key).ToHashSet();
        return BuiltIn().Select(device => Describe(device, new GaugePort.Serial(device), "built-in serial port"))
            .Concat(onUsb.Select(terminal => Describe(terminal.Device, several.Contains(terminal.Identity) ? new GaugePort.Serial(terminal.Device) : new GaugePort.Usb(terminal.Identity), terminal.Title)));
    }

    // The kernel lists ports that the board might have had; a type of 0 says that there is no chip behind one (PORT_UNKNOWN).
    private IEnumerable<string> BuiltIn()
    {
        var folder = Path.Combine(roots.Sysfs, "class", "tty");
        return Directory.Exists(folder)
            ? Directory.EnumerateFileSystemEntries(folder, "ttyS*").Order(StringComparer.Ordinal)
                .Where(entry => TypeOf(entry) is not (null or "0"))
                .Select(entry => Path.Combine(roots.Devices, Path.GetFileName(entry)))
            : [];
    }

    private static string? TypeOf(string entry)
    {
        try
        {
            return File.ReadAllText(Path.Combine(entry, "type")).Trim();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static PluggedPort Describe(string device, GaugePort port, string title)
    {
        var access = HidrawCalls.AccessTo(device);
        return new()
        {
            Device = device,
            Port = port,
            Title = title,
            MayOpen = access == HidAccess.ReadWrite,
            Trouble = access switch
            {
                HidAccess.ReadWrite => null,
                HidAccess.Missing => $"There is no {device}, though the kernel knows of it: unplug the cable and plug it in again.",
                _ => SerialTrouble.NotPermittedSentence(device),
            },
        };
    }

    private static PluggedPort Describe(HidDevice device) => new()
    {
        Device = device.Node,
        Port = device.Port,
        IsHid = true,
        Title = device.Name,
        MayOpen = device.Access is HidAccess.ReadWrite or HidAccess.ReadOnly,
        Trouble = device.Sentence,
    };

    private static PluggedPort Held(PluggedPort port, IReadOnlyList<PortHolder> holders) => port with { Holders = holders };
}
