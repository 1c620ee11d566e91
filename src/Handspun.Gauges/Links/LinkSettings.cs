using System.IO.Ports;
using Handspun.Gauges.Hid;

namespace Handspun.Gauges.Links;

/// <summary>How a serial line is set, and what a HID gauge has to have. A network link has no use for it.</summary>
public sealed record LinkSettings
{
    /// <summary>Bits a second on the line.</summary>
    public int Baud { get; init; } = 9600;

    /// <summary>Data bits in a character, 5 to 8.</summary>
    public int DataBits { get; init; } = 8;

    /// <summary>The parity bit.</summary>
    public Parity Parity { get; init; } = Parity.None;

    /// <summary>Stop bits.</summary>
    public StopBits StopBits { get; init; } = StopBits.One;

    /// <summary>How either end asks the other to wait.</summary>
    public Handshake Handshake { get; init; } = Handshake.None;

    /// <summary>Level of the DTR line; null leaves it as it is. Many gauge cables draw their power from it.</summary>
    public bool? DataTerminalReady { get; init; }

    /// <summary>Level of the RTS line; null leaves it as it is.</summary>
    public bool? RequestToSend { get; init; }

    /// <summary>What is looked for in a HID gauge's reports; null on every other way.</summary>
    public HidFormat? Hid { get; init; }
}
