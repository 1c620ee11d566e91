using System.Globalization;
using Handspun.Gauges.Links;

namespace Handspun.Gauges.Finding;

/// <summary>A program that holds a device open.</summary>
/// <param name="Process">Its number.</param>
/// <param name="Name">Its name.</param>
public sealed record PortHolder(int Process, string Name)
{
    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Name} (process {Process})");
}

/// <summary>Who holds which device, by the links below <c>/proc/*/fd</c>. Programs of other users are not seen unless this one is root's.</summary>
public sealed class PortHolders(DeviceRoots roots)
{
    /// <summary>The programs that hold a device under the folder of device nodes, by the device's path; this program left out.</summary>
    public ILookup<string, PortHolder> All() => Directory.Exists(roots.Processes)
        ? Directory.EnumerateDirectories(roots.Processes)
            .SelectMany(HeldBy)
            .Distinct()
            .OrderBy(held => held.Holder.Process)
            .ToLookup(held => held.Device, held => held.Holder, StringComparer.Ordinal)
        : Array.Empty<PortHolder>().ToLookup(_ => "");

    private IEnumerable<(string Device, PortHolder Holder)> HeldBy(string folder)
    {
        if (!int.TryParse(Path.GetFileName(folder), NumberStyles.None, CultureInfo.InvariantCulture, out var process) || process == Environment.ProcessId)
        {
            return [];
        }

        try
        {
            var devices = Directory.EnumerateFileSystemEntries(Path.Combine(folder, "fd"))
                .Select(handle => new FileInfo(handle).LinkTarget)
                .OfType<string>()
                .Where(target => target.StartsWith(roots.Devices + Path.DirectorySeparatorChar, StringComparison.Ordinal))
                .ToList();
            return devices.Count == 0 ? [] : [.. devices.Select(device => (device, new PortHolder(process, NameOf(folder))))];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return [];   // it has ended meanwhile, or is another user's
        }
    }

    private static string NameOf(string folder) => File.ReadAllText(Path.Combine(folder, "comm")).Trim();
}
