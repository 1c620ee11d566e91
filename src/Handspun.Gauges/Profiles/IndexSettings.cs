using System.Collections.Frozen;

namespace Handspun.Gauges.Profiles;

/// <summary>Where an index pulse comes from.</summary>
public enum IndexSource
{
    /// <summary>A token in the gauge's own frames.</summary>
    Token,

    /// <summary>A modem line of the serial port.</summary>
    Line,

    /// <summary>A button of a HID device, in its reports.</summary>
    HidButton,

    /// <summary>A key, a pedal or a button on a screen: a call to the station says so.</summary>
    Key,

    /// <summary>A message on the station's broker, from a sensor elsewhere.</summary>
    Mqtt,
}

/// <summary>A line of a serial port that the far end drives (ITU-T V.24 circuits 106, 107, 109 and 125).</summary>
public enum ModemLine
{
    /// <summary>Clear to send.</summary>
    Cts,

    /// <summary>Data set ready.</summary>
    Dsr,

    /// <summary>Data carrier detect.</summary>
    Dcd,

    /// <summary>Ring indicator.</summary>
    Ri,
}

/// <summary>How a once-per-turn pulse comes in, and what it stands for.</summary>
public sealed record IndexSettings
{
    /// <summary>The sources, by their names in profiles and journals.</summary>
    public static FrozenDictionary<string, IndexSource> Sources { get; } = new Dictionary<string, IndexSource>
    {
        ["token"] = IndexSource.Token,
        ["line"] = IndexSource.Line,
        ["hid-button"] = IndexSource.HidButton,
        ["key"] = IndexSource.Key,
        ["mqtt"] = IndexSource.Mqtt,
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The name of a source in profiles and journals.</summary>
    public static string NameOf(IndexSource source) => Sources.First(named => named.Value == source).Key;

    /// <summary>Where it comes from.</summary>
    public required IndexSource Source { get; init; }

    /// <summary>The line, where it comes on one.</summary>
    public ModemLine Line { get; init; } = ModemLine.Cts;

    /// <summary>Whether the pulse counts when the line falls; otherwise when it rises. The ring indicator shows only that it rang.</summary>
    public bool Falling { get; init; }

    /// <summary>So long after a pulse that counted, a further one is taken for the bouncing of a contact.</summary>
    public TimeSpan Debounce { get; init; }

    /// <summary>Turns of the shaft from one pulse to the next; the overall gear ratio where the pulse comes from the rear wheel.</summary>
    public double Turns { get; init; } = 1;

    /// <summary>Whether pulses lie in the gauge's bytes, so that they are found by decoding and not beside it.</summary>
    public bool IsInTheBytes => Source is IndexSource.Token or IndexSource.HidButton;
}
