using Handspun.Gauges.Readings;

namespace Handspun.Broker;

/// <summary>The topics of the station. They are a public contract.</summary>
internal static class Topics
{
    /// <summary>What all of them begin with.</summary>
    public const string Root = "handspun/v1/";

    private const string IndexEnding = "/index";

    /// <summary>Readings of a gauge, in batches.</summary>
    public static string Readings(GaugeName gauge) => $"{Root}gauges/{gauge}/readings";

    /// <summary>How a gauge is; retained.</summary>
    public static string State(GaugeName gauge) => $"{Root}gauges/{gauge}/state";

    /// <summary>Index pulses for a gauge: the one topic on which others publish and the station listens.</summary>
    public static string Index(GaugeName gauge) => $"{Root}gauges/{gauge}{IndexEnding}";

    /// <summary>Reads the gauge out of such a topic.</summary>
    /// <returns>False where it is another topic.</returns>
    public static bool TryReadIndex(string topic, out GaugeName gauge)
    {
        const string start = Root + "gauges/";
        gauge = default;
        return topic.Length > start.Length + IndexEnding.Length
            && topic.StartsWith(start, StringComparison.Ordinal)
            && topic.EndsWith(IndexEnding, StringComparison.Ordinal)
            && GaugeName.TryParse(topic[start.Length..^IndexEnding.Length], out gauge);
    }

    /// <summary>How far a capture has come.</summary>
    public static string Progress(string capture) => $"{Root}captures/{capture}/progress";

    /// <summary>The result that counts at a point of a job; retained.</summary>
    public static string Result(string job, string point) => $"{Root}jobs/{job}/points/{point}/result";
}
