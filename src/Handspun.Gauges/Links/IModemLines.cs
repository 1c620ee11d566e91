using System.IO.Ports;
using Handspun.Gauges.Profiles;

namespace Handspun.Gauges.Links;

/// <summary>The lines of a serial port that the far end drives.</summary>
internal interface IModemLines
{
    /// <summary>A line has changed, or has rung.</summary>
    event Action<ModemLine>? Changed;

    /// <summary>Whether a line is up now. Not known of the ring indicator.</summary>
    bool IsUp(ModemLine line);
}

/// <summary>Those of a real port.</summary>
internal sealed class PortModemLines : IModemLines, IDisposable
{
    private readonly SerialPort _port;

    /// <summary>Listens to a port's lines until it is disposed.</summary>
    public PortModemLines(SerialPort port)
    {
        _port = port;
        _port.PinChanged += OnPinChanged;
    }

    /// <inheritdoc/>
    public event Action<ModemLine>? Changed;

    /// <inheritdoc/>
    public bool IsUp(ModemLine line)
    {
        try
        {
            return line switch
            {
                ModemLine.Cts => _port.CtsHolding,
                ModemLine.Dsr => _port.DsrHolding,
                ModemLine.Dcd => _port.CDHolding,
                _ => false,
            };
        }
        catch (Exception e) when (e is IOException or InvalidOperationException or UnauthorizedAccessException)
        {
            return false;   // the cable went out, or the port has no such lines
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _port.PinChanged -= OnPinChanged;

    private void OnPinChanged(object sender, SerialPinChangedEventArgs change)
    {
        ModemLine? line = change.EventType switch
        {
            SerialPinChange.CtsChanged => ModemLine.Cts,
            SerialPinChange.DsrChanged => ModemLine.Dsr,
            SerialPinChange.CDChanged => ModemLine.Dcd,
            SerialPinChange.Ring => ModemLine.Ri,
            _ => null,
        };
        if (line is { } known)
        {
            Changed?.Invoke(known);
        }
    }
}
