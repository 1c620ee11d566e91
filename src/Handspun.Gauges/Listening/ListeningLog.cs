using Handspun.Gauges.Links;
using Handspun.Gauges.Readings;
using Microsoft.Extensions.Logging;

namespace Handspun.Gauges.Listening;

internal static partial class ListeningLog
{
    [LoggerMessage(2001, LogLevel.Information, "Gauge {Gauge} is open at {Port}")]
    public static partial void Opened(ILogger logger, GaugeName gauge, GaugePort port);

    [LoggerMessage(2002, LogLevel.Warning, "Gauge {Gauge} is not to be had: {Reason}")]
    public static partial void Refused(ILogger logger, GaugeName gauge, string reason);

    [LoggerMessage(2003, LogLevel.Warning, "Gauge {Gauge} was lost at {Port}")]
    public static partial void Lost(ILogger logger, GaugeName gauge, GaugePort port);

    [LoggerMessage(2004, LogLevel.Debug, "The link of gauge {Gauge} ended: {Reason}")]
    public static partial void Failed(ILogger logger, GaugeName gauge, string reason);

    [LoggerMessage(2005, LogLevel.Error, "What gauge {Gauge} sends cannot be journalled")]
    public static partial void NotJournalled(ILogger logger, GaugeName gauge, Exception e);

    [LoggerMessage(2006, LogLevel.Error, "Listening to gauge {Gauge} failed; it is tried again")]
    public static partial void Stumbled(ILogger logger, GaugeName gauge, Exception e);
}
