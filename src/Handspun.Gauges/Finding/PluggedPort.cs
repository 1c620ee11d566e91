using Handspun.Gauges.Links;

namespace Handspun.Gauges.Finding;

/// <summary>Something that is plugged in and that may be a gauge.</summary>
public sealed record PluggedPort
{
    /// <summary>The device of the moment, such as <c>/dev/ttyUSB0</c> or <c>COM3</c>.</summary>
    public required string Device { get; init; }

    /// <summary>How a gauge of the shop names it: by what stays the same when it is plugged in elsewhere, where there is such a thing.</summary>
    public required GaugePort Port { get; init; }

    /// <summary>Whether it is a HID device; otherwise it is a serial one.</summary>
    public bool IsHid { get; init; }

    /// <summary>What it calls itself; empty where it says nothing.</summary>
    public string Title { get; init; } = "";

    /// <summary>Whether this user may open it.</summary>
    public bool MayOpen { get; init; } = true;

    /// <summary>The other programs that hold it.</summary>
    public IReadOnlyList<PortHolder> Holders { get; init; } = [];

    /// <summary>What is wrong and what to do, in one sentence; null where nothing is.</summary>
    public string? Trouble { get; init; }
}
