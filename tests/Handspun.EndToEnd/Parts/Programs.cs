using System.Reflection;

namespace Handspun.EndToEnd.Parts;

/// <summary>Where the built programs lie.</summary>
internal static class Programs
{
    private static readonly string Folder = Told("ProgramFolder");

    public static string Handspun { get; } = Path.Combine(Folder, "handspun");

    public static string VirtualGauge { get; } = Path.Combine(Folder, "virtual-gauge", "virtual-gauge");

    public static string SampleCaptures { get; } = Told("SampleCaptures");

    private static string Told(string key) => Path.GetFullPath(typeof(Programs).Assembly
        .GetCustomAttributes<AssemblyMetadataAttribute>().Single(metadata => metadata.Key == key).Value!);
}
