using System.Text.Json;
using Handspun.Gauges.Hid;

namespace Handspun.Gauges.Tests.Hid;

/// <summary>Report descriptors for tests.</summary>
internal static class Descriptors
{
    /// <summary>A gauge that sends report 3: an int16 in micrometres on a maker's page, then two buttons and padding.</summary>
    public const string Gauge =
        "06 00 FF 09 01 A1 01 85 03 " +
        "09 02 16 00 80 26 FF 7F 36 00 80 46 FF 7F 55 0C 65 11 75 10 95 01 81 02 " +
        "05 09 19 01 29 02 15 00 25 01 35 00 45 00 55 00 65 00 75 01 95 02 81 02 95 06 81 03 C0";

    public static byte[] Bytes(string hex) => Convert.FromHexString(hex.Replace(" ", "", StringComparison.Ordinal));

    public static ReportDescriptor Parsed(string hex)
    {
        Assert.True(ReportDescriptor.TryParse(Bytes(hex), out var descriptor, out var fault), fault.ToString());
        return descriptor;
    }

    public static DescriptorFault FaultOf(string hex)
    {
        Assert.False(ReportDescriptor.TryParse(Bytes(hex), out var descriptor, out var fault));
        Assert.Empty(descriptor.Fields);
        return fault;
    }

    public static JsonElement Published(string file)
    {
        using var json = JsonDocument.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Hid", file)));
        return json.RootElement.Clone();
    }
}
