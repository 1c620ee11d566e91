using Handspun.Gauges.Journal;
using Handspun.Gauges.Profiles;

namespace Handspun.VirtualGauge.Samples;

/// <summary>What stands at the head of every sample.</summary>
internal static class SampleHeader
{
    private static readonly DateTimeOffset Zero = new(2026, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>The head.</summary>
    /// <param name="profile">The profile that reads it.</param>
    /// <param name="port">Where such a gauge would be plugged in.</param>
    /// <param name="from">When its first frame comes.</param>
    public static JournalHeader Of(GaugeProfile profile, string port, TimeSpan from) => new()
    {
        Gauge = "pinion",
        Port = port,
        Zero = Zero,
        From = from,
        Capture = "sample",
        Job = "2026-0001",
        Point = "pinion-runout",
        Profile = profile.Name,
        ProfileText = profile.Text,
    };
}
