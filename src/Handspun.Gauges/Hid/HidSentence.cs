using Handspun.Gauges.Links;

namespace Handspun.Gauges.Hid;

/// <summary>What is said of a HID gauge that cannot be read.</summary>
internal static class HidSentence
{
    public const string LinuxOnly = "A HID gauge can be read on Linux only in this version: plug it into a Linux machine, or use a gauge with a serial port.";

    public static string Absent(GaugePort port) => $"No HID gauge {port} is plugged in: plug it in; 'handspun gauges' lists what is there.";

    public static string NotPermitted(string node, UsbIdentity? identity) => identity is { } known
        ? $"{node} may not be opened by user '{Environment.UserName}': write the line {UdevRule.For(known)} into {UdevRule.File}, run 'sudo udevadm control --reload' and plug the gauge in again."
        : $"{node} may not be opened by user '{Environment.UserName}': give that user the right to read it.";

    public static string Busy(string node) => $"Another program holds {node}: close it.";

    public static string NoHid(string node) => $"{node} does not open as a HID device: check that it is the gauge's.";

    public static string Ambiguous(GaugePort port, IEnumerable<HidDevice> devices) =>
        $"{port} fits {string.Join(" and ", devices.Select(device => $"{device.Node} ({device.Port})"))}: give the serial number too, or the node where there is none.";

    public static string Unsuited(HidDevice device) =>
        $"{device.Node} ({(device.Name.Length > 0 ? device.Name : device.Port)}) sends nothing of what the profile's [hid] section names: use another profile; 'handspun gauges --try {device.Port}' proposes one.";
}
