namespace Handspun.VirtualGauge.Wires;

/// <summary>The way out of the gauge: a real device or socket that another program opens.</summary>
internal interface IWire : IDisposable
{
    /// <summary>What the other program gives as the gauge's port.</summary>
    string Port { get; }

    /// <summary>Sends bytes as a cable does: where nobody listens they are gone.</summary>
    void Send(ReadOnlySpan<byte> bytes);
}
