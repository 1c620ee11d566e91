using Handspun.Gauges.Links;
using Handspun.Gauges.Tests.Journal;

namespace Handspun.Gauges.Tests.Links;

/// <summary>Files that stand in for the kernel's tree of devices, linked as the kernel links it.</summary>
/// <remarks>Laid out after the kernel's own documentation (Documentation/admin-guide/sysfs-rules) and a look at a real tree; the names of ports are invented.</remarks>
internal sealed class UsbTree : IDisposable
{
    private readonly TestFolder _folder = new();

    public UsbTree() => Directory.CreateDirectory(Terminals);

    public DeviceRoots Roots => new() { Sysfs = _folder.File("sys"), Devices = _folder.File("dev"), Processes = _folder.File("proc") };

    private string Terminals => Path.Combine(_folder.Path, "sys", "class", "tty");

    /// <summary>Plugs a converter in, of which the kernel makes a device below its interface.</summary>
    public void PlugConverter(string tty, string bus, string vendor, string product, string? serial, string title = "Converter") =>
        Plug(tty, bus, Path.Combine($"{bus}:1.0", tty), vendor, product, serial, title);

    /// <summary>Plugs a gauge in that is a modem by its class: its terminal hangs at the interface itself.</summary>
    public void PlugModem(string tty, string bus, string vendor, string product, string? serial) =>
        Plug(tty, bus, $"{bus}:1.0", vendor, product, serial, "Gauge");

    /// <summary>A terminal that no hardware is behind.</summary>
    public void AddVirtual(string tty)
    {
        var terminal = Directory.CreateDirectory(Path.Combine(_folder.Path, "sys", "devices", "virtual", "tty", tty));
        Directory.CreateSymbolicLink(Path.Combine(Terminals, tty), Path.GetRelativePath(Terminals, terminal.FullName));
    }

    /// <summary>A port of the board's own, with the kernel's number of the chip behind it; 0 for none.</summary>
    public void AddBuiltIn(string tty, string type)
    {
        AddVirtual(tty);
        File.WriteAllText(Path.Combine(Terminals, tty, "type"), type + "\n");
    }

    /// <summary>A program that runs and holds files open.</summary>
    public void Run(int process, string name, params string[] held)
    {
        var folder = Path.Combine(Roots.Processes, process.ToString(System.Globalization.CultureInfo.InvariantCulture));
        var handles = Directory.CreateDirectory(Path.Combine(folder, "fd")).FullName;
        File.WriteAllText(Path.Combine(folder, "comm"), name + "\n");
        for (var i = 0; i < held.Length; i++)
        {
            File.CreateSymbolicLink(Path.Combine(handles, i.ToString(System.Globalization.CultureInfo.InvariantCulture)), held[i]);
        }
    }

    public void Unplug(string tty, string bus)
    {
        File.Delete(Path.Combine(Terminals, tty));
        Directory.Delete(Hub(bus), recursive: true);
    }

    public void Dispose() => _folder.Dispose();

    private string Hub(string bus) => Path.Combine(_folder.Path, "sys", "devices", "pci0000:00", "usb1", bus);

    private void Plug(string tty, string bus, string below, string vendor, string product, string? serial, string title)
    {
        var device = Path.Combine(Hub(bus), below);
        var terminal = Directory.CreateDirectory(Path.Combine(device, "tty", tty)).FullName;
        Directory.CreateSymbolicLink(Path.Combine(terminal, "device"), Path.GetRelativePath(terminal, device));
        Directory.CreateSymbolicLink(Path.Combine(Terminals, tty), Path.GetRelativePath(Terminals, terminal));
        Write(bus, "idVendor", vendor);
        Write(bus, "idProduct", product);
        Write(bus, "product", title);
        if (serial is not null)
        {
            Write(bus, "serial", serial);
        }
    }

    private void Write(string bus, string file, string text) => File.WriteAllText(Path.Combine(Hub(bus), file), text + "\n");
}
