using System.Reflection;

namespace Handspun.EndToEnd.Parts;

/// <summary>Where the built programs lie.</summary>
internal static class Programs
{
    private static readonly string Folder = Path.GetFullPath(typeof(Programs).Assembly
        .GetCustomAttributes<AssemblyMetadataAttribute>().Single(metadata => metadata.Key == "ProgramFolder").Value!);

    public static string Handspun { get; } = Path.Combine(Folder, "handspun");

    public static string VirtualGauge { get; } = Path.Combine(Folder, "virtual-gauge", "virtual-gauge");
}
