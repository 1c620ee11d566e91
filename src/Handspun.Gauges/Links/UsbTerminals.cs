using System.Globalization;

namespace Handspun.Gauges.Links;

/// <summary>A serial device on USB.</summary>
/// <param name="Device">Its node, such as <c>/dev/ttyUSB0</c>.</param>
/// <param name="Identity">What it is.</param>
/// <param name="Title">What it calls itself; empty where it says nothing.</param>
public sealed record UsbTerminal(string Device, UsbIdentity Identity, string Title);

/// <summary>The serial devices on USB that are plugged in now, as the Linux kernel shows them below <c>class/tty</c>.</summary>
public sealed class UsbTerminals(DeviceRoots roots)
{
    /// <summary>All of them, in the order of their names. None where the kernel shows none, and on other systems.</summary>
    public IReadOnlyList<UsbTerminal> All()
    {
        var folder = Path.Combine(roots.Sysfs, "class", "tty");
        return Directory.Exists(folder)
            ? [.. Directory.EnumerateFileSystemEntries(folder).Order(StringComparer.Ordinal).Select(Read).OfType<UsbTerminal>()]
            : [];
    }

    /// <summary>The device that is plugged in with this identity.</summary>
    /// <exception cref="LinkUnavailableException">There is none, or more than one.</exception>
    public string Find(UsbIdentity identity)
    {
        var found = All().Where(terminal => identity.Fits(terminal.Identity)).ToList();
        return found.Count switch
        {
            1 => found[0].Device,
            0 when !OperatingSystem.IsLinux() => throw new LinkUnavailableException(LinkFault.Absent, "Gauges are found by their USB identity on Linux only: give the port by its name, such as COM3."),
            0 => throw new LinkUnavailableException(LinkFault.Absent, $"No serial device usb:{identity} is plugged in: plug the gauge's cable in; 'handspun gauges' lists what is there."),
            _ => throw new LinkUnavailableException(
                LinkFault.Absent,
                $"usb:{identity} fits {string.Join(" and ", found.Select(terminal => $"{terminal.Device} (usb:{terminal.Identity})"))}: give the serial number too, or the port by its name."),
        };
    }

    private UsbTerminal? Read(string entry)
    {
        try
        {
            for (var folder = DeviceOf(entry); folder is not null; folder = folder.Parent)
            {
                if (Number(folder, "idVendor") is { } vendor && Number(folder, "idProduct") is { } product)
                {
                    var serial = Text(folder, "serial");
                    return new(
                        Path.Combine(roots.Devices, Path.GetFileName(entry)),
                        new(vendor, product, serial.Length > 0 ? serial : null),
                        Text(folder, "product"));
                }
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // It was pulled out while it was looked at, or the kernel shows it to nobody: then it is not there.
        }

        return null;
    }

    // The entry is a link into the tree of devices, and so is the entry's own link to its device: one leads past the other.
    private static DirectoryInfo? DeviceOf(string entry)
    {
        var terminal = Target(entry);
        var device = Path.Combine(terminal, "device");
        return Directory.Exists(device) ? new DirectoryInfo(Target(device)) : null;
    }

    private static string Target(string path) => Directory.ResolveLinkTarget(path, returnFinalTarget: true)?.FullName ?? path;

    private static ushort? Number(DirectoryInfo folder, string file) =>
        ushort.TryParse(Text(folder, file), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var number) ? number : null;

    private static string Text(DirectoryInfo folder, string file)
    {
        var path = Path.Combine(folder.FullName, file);
        return File.Exists(path) ? File.ReadAllText(path).Trim() : "";
    }
}
