namespace Handspun.Gauges.Links;

/// <summary>Where the operating system tells of its devices: a test or another machine's files can stand in for them.</summary>
public sealed record DeviceRoots
{
    /// <summary>The folder of the kernel's view of devices.</summary>
    public string Sysfs { get; init; } = "/sys";

    /// <summary>The folder of device nodes.</summary>
    public string Devices { get; init; } = "/dev";

    /// <summary>The folder in which every running program has one of its own.</summary>
    public string Processes { get; init; } = "/proc";
}
