using System.IO.Ports;
using Handspun.Gauges.Links;

namespace Handspun.Gauges.Profiles;

/// <summary>Reads the section <c>[link]</c> of a profile.</summary>
internal static class LinkReader
{
    private static readonly Dictionary<string, Parity> Parities = new()
    {
        ["none"] = Parity.None,
        ["even"] = Parity.Even,
        ["odd"] = Parity.Odd,
        ["mark"] = Parity.Mark,
        ["space"] = Parity.Space,
    };

    private static readonly Dictionary<string, StopBits> Stops = new() { ["1"] = StopBits.One, ["1.5"] = StopBits.OnePointFive, ["2"] = StopBits.Two };

    private static readonly Dictionary<string, Handshake> Handshakes = new()
    {
        ["none"] = Handshake.None,
        ["rts-cts"] = Handshake.RequestToSend,
        ["xon-xoff"] = Handshake.XOnXOff,
        ["both"] = Handshake.RequestToSendXOnXOff,
    };

    /// <summary>Reads it.</summary>
    public static LinkSettings Read(ProfileSection section)
    {
        var settings = new LinkSettings
        {
            Baud = section.Whole("baud", 9600, 110, 4_000_000),
            DataBits = section.Whole("data_bits", 8, 5, 8),
            Parity = section.Choice("parity", "none", Parities),
            StopBits = section.Choice("stop_bits", "1", Stops),
            Handshake = section.Choice("handshake", "none", Handshakes),
            DataTerminalReady = section.Switch("dtr"),
            RequestToSend = section.Switch("rts"),
        };
        if (settings is { RequestToSend: not null, Handshake: Handshake.RequestToSend or Handshake.RequestToSendXOnXOff })
        {
            section.Complain("rts", "cannot be set while the handshake drives that line: leave it out, or use another handshake");
        }

        section.RefuseTheRest();
        return settings;
    }
}
