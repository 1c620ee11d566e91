using Handspun.Gauges.Links;

namespace Handspun.Gauges.Hid;

/// <summary>What a HID device is plugged into.</summary>
public enum HidBus
{
    /// <summary>Something else.</summary>
    Other,

    /// <summary>USB.</summary>
    Usb,

    /// <summary>Bluetooth.</summary>
    Bluetooth,
}

/// <summary>What this user may do with a device node.</summary>
public enum HidAccess
{
    /// <summary>Read and write.</summary>
    ReadWrite,

    /// <summary>Read only: enough for a gauge that sends by itself.</summary>
    ReadOnly,

    /// <summary>Nothing.</summary>
    Denied,

    /// <summary>The kernel shows the device and there is no node for it.</summary>
    Missing,
}

/// <summary>A HID device that is plugged in.</summary>
public sealed record HidDevice
{
    /// <summary>Its node, such as <c>/dev/hidraw0</c>; belongs to another device the next time.</summary>
    public required string Node { get; init; }

    /// <summary>What stays the same when it is plugged in elsewhere.</summary>
    public required UsbIdentity Identity { get; init; }

    /// <summary>What it is plugged into.</summary>
    public HidBus Bus { get; init; }

    /// <summary>What it calls itself; empty where it says nothing.</summary>
    public string Name { get; init; } = "";

    /// <summary>Its report descriptor as it gave it; empty where it cannot be read.</summary>
    public ReadOnlyMemory<byte> DescriptorBytes { get; init; }

    /// <summary>What its report descriptor says; null where there is none that holds.</summary>
    public ReportDescriptor? Descriptor { get; init; }

    /// <summary>What is wrong with its report descriptor.</summary>
    public DescriptorFault DescriptorFault { get; init; }

    /// <summary>What this user may do with its node.</summary>
    public HidAccess Access { get; init; }

    /// <summary>The port by which a gauge of the shop names it.</summary>
    public GaugePort Port => new GaugePort.Hid(Identity);

    /// <summary>What is wrong and what to do, in one sentence; null where nothing is.</summary>
    public string? Sentence => Access switch
    {
        HidAccess.Missing => $"There is no {Node}: unplug the gauge and plug it in again.",
        HidAccess.Denied => HidSentence.NotPermitted(Node, Identity),
        _ when Descriptor is null => $"{Node} has no report descriptor that can be read ({DescriptorFault}): use a profile that gives the value's bits instead of its usage.",
        _ => null,
    };
}
