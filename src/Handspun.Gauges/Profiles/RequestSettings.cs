namespace Handspun.Gauges.Profiles;

/// <summary>What a gauge has to be told so that it sends. All of it empty for a gauge that sends by itself.</summary>
public sealed record RequestSettings
{
    /// <summary>Bytes that ask for a reading.</summary>
    public ReadOnlyMemory<byte> Send { get; init; }

    /// <summary>How often they are sent; null sends them when somebody asks: a pedal, a button, a call.</summary>
    public TimeSpan? Every { get; init; }

    /// <summary>Bytes that go out when the port has been opened.</summary>
    public ReadOnlyMemory<byte> Start { get; init; }

    /// <summary>Bytes that go out before the port is closed.</summary>
    public ReadOnlyMemory<byte> Stop { get; init; }

    /// <summary>Whether a reading can be asked for.</summary>
    public bool OnDemand => !Send.IsEmpty;
}
