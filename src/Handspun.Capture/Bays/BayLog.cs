using Handspun.Gauges.Readings;
using Handspun.Jobs.Records;
using Microsoft.Extensions.Logging;

namespace Handspun.Capture.Bays;

internal static partial class BayLog
{
    [LoggerMessage(3001, LogLevel.Information, "The bay measures {Point} of job {Job} with gauge {Gauge}")]
    public static partial void Assigned(ILogger logger, string job, string point, GaugeName gauge);

    [LoggerMessage(3002, LogLevel.Information, "Capture {Capture} of job {Job}, {Point}, has started with gauge {Gauge}")]
    public static partial void Started(ILogger logger, string capture, string job, string point, GaugeName gauge);

    [LoggerMessage(3003, LogLevel.Information, "Capture {Capture} of job {Job} has ended ({Ending}) after {Count:0.00} {Counted} and {Readings} readings of gauge {Gauge}")]
    public static partial void Finished(ILogger logger, string capture, string job, GaugeName gauge, CaptureEnding ending, double count, string counted, int readings);

    [LoggerMessage(3004, LogLevel.Information, "Capture {Capture} was only a touch and is not recorded")]
    public static partial void Touched(ILogger logger, string capture);

    [LoggerMessage(3005, LogLevel.Error, "{Receiver} failed over what happened in the bay")]
    public static partial void ReceiverFailed(ILogger logger, string receiver, Exception e);

    [LoggerMessage(3006, LogLevel.Error, "The bay's outbox is full: something that happened was not told")]
    public static partial void OutboxFull(ILogger logger);

    [LoggerMessage(3007, LogLevel.Warning, "The bay fell behind its gauges and missed {Readings} readings; they are in the journal")]
    public static partial void Behind(ILogger logger, long readings);
}
