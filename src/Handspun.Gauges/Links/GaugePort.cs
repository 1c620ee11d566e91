using System.Globalization;

namespace Handspun.Gauges.Links;

/// <summary>
/// Where a gauge is plugged in: a serial device (<c>/dev/ttyUSB0</c>, <c>COM3</c>), a USB serial device by what it is
/// (<c>usb:VVVV:PPPP[:SERIAL]</c>), a HID gauge by what it is (<c>hid:VVVV:PPPP[:SERIAL]</c>) or by its node
/// (<c>/dev/hidraw0</c>), a serial-device server (<c>tcp://host:port</c>), or a journal that stands in for a gauge
/// (<c>replay:FILE</c>).
/// </summary>
public abstract record GaugePort
{
    private const string TcpScheme = "tcp://";
    private const string UsbScheme = "usb:";
    private const string ReplayScheme = "replay:";
    private const string HidScheme = "hid:";

    private GaugePort()
    {
    }

    /// <summary>Reads a port as it stands on the command line or in a file.</summary>
    /// <returns>False where it is none of these.</returns>
    public static bool TryParse(string? text, out GaugePort? port)
    {
        port = null;
        if (string.IsNullOrWhiteSpace(text))
        {
            return false;
        }

        if (text.StartsWith(UsbScheme, StringComparison.OrdinalIgnoreCase))
        {
            port = UsbIdentity.TryParse(text.AsSpan(UsbScheme.Length), out var identity) ? new Usb(identity) : null;
            return port is not null;
        }

        if (text.StartsWith(ReplayScheme, StringComparison.OrdinalIgnoreCase))
        {
            port = ReplayPace.TryTake(text[ReplayScheme.Length..], out var pace, out var file) ? new Replay(file, pace) : null;
            return port is not null;
        }

        if (text.StartsWith(HidScheme, StringComparison.OrdinalIgnoreCase))
        {
            port = UsbIdentity.TryParse(text.AsSpan(HidScheme.Length), out var identity) ? new Hid(identity) : null;
            return port is not null;
        }

        if (IsHidNode(text))
        {
            port = new HidNode(text);
            return true;
        }

        if (!text.StartsWith(TcpScheme, StringComparison.OrdinalIgnoreCase))
        {
            port = text.Contains("://", StringComparison.Ordinal) ? null : new Serial(text);
            return port is not null;
        }

        var address = text[TcpScheme.Length..].TrimEnd('/');
        var colon = address.LastIndexOf(':');
        if (colon <= 0 || !ushort.TryParse(address[(colon + 1)..], NumberStyles.None, CultureInfo.InvariantCulture, out var number) || number == 0)
        {
            return false;
        }

        var host = address[..colon];
        if (Uri.CheckHostName(host) is UriHostNameType.Unknown || (host.Contains(':') && !host.StartsWith('[')))
        {
            return false;
        }

        port = new Tcp(host.Trim('[', ']'), number);
        return true;
    }

    private static bool IsHidNode(string text)
    {
        const string name = "hidraw";
        var last = text.AsSpan(text.LastIndexOf('/') + 1);
        return text.StartsWith('/') && last.StartsWith(name, StringComparison.Ordinal) && last.Length > name.Length
            && !last[name.Length..].ContainsAnyExceptInRange('0', '9');
    }

    /// <summary>A serial device, named as the operating system names it.</summary>
    /// <param name="Device">Its path or name.</param>
    public sealed record Serial(string Device) : GaugePort
    {
        /// <summary>The device at the end of a link; the name as it is where it is none.</summary>
        public string FinalDevice() => File.Exists(Device) ? File.ResolveLinkTarget(Device, returnFinalTarget: true)?.FullName ?? Device : Device;

        /// <inheritdoc/>
        public override string ToString() => Device;
    }

    /// <summary>A TCP address that passes on the bytes of a serial line.</summary>
    /// <param name="Host">Name or address.</param>
    /// <param name="Number">TCP port, 1 to 65535.</param>
    public sealed record Tcp(string Host, int Number) : GaugePort
    {
        /// <inheritdoc/>
        public override string ToString() =>
            string.Create(CultureInfo.InvariantCulture, $"{TcpScheme}{(Host.Contains(':') ? $"[{Host}]" : Host)}:{Number}");
    }

    /// <summary>A serial device on USB, wherever it is plugged in; found anew at each opening.</summary>
    /// <param name="Identity">What it is.</param>
    public sealed record Usb(UsbIdentity Identity) : GaugePort
    {
        /// <inheritdoc/>
        public override string ToString() => UsbScheme + Identity;
    }

    /// <summary>A journal, whose bytes come as they once came from the gauge.</summary>
    /// <param name="File">The journal's path.</param>
    /// <param name="Pace">How fast they come.</param>
    public sealed record Replay(string File, ReplayPace Pace) : GaugePort
    {
        /// <inheritdoc/>
        public override string ToString() => $"{ReplayScheme}{Pace}{File}";
    }

    /// <summary>A HID gauge, wherever it is plugged in.</summary>
    /// <param name="Identity">What it is.</param>
    public sealed record Hid(UsbIdentity Identity) : GaugePort
    {
        /// <inheritdoc/>
        public override string ToString() => HidScheme + Identity;
    }

    /// <summary>A HID gauge by the node that it has for the moment.</summary>
    /// <param name="Node">Its path, such as <c>/dev/hidraw0</c>.</param>
    public sealed record HidNode(string Node) : GaugePort
    {
        /// <inheritdoc/>
        public override string ToString() => Node;
    }
}
