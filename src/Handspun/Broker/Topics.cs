using Handspun.Gauges.Readings;

namespace Handspun.Broker;

/// <summary>The topics of the station. They are a public contract.</summary>
internal static class Topics
{
    /// <summary>What all of them begin with.</summary>
    public const string Root = "handspun/v1/";

    /// <summary>Readings of a gauge, in batches.</summary>
    public static string Readings(GaugeName gauge) => $"{Root}gauges/{gauge}/readings";

    /// <summary>How a gauge is; retained.</summary>
    public static string State(GaugeName gauge) => $"{Root}gauges/{gauge}/state";

    /// <summary>How far a capture has come.</summary>
    public static string Progress(string capture) => $"{Root}captures/{capture}/progress";

    /// <summary>The result that counts at a point of a job; retained.</summary>
    public static string Result(string job, string point) => $"{Root}jobs/{job}/points/{point}/result";
}
