namespace Handspun.Filing;

internal static partial class FilingLog
{
    [LoggerMessage(4001, LogLevel.Information, "Record {Capture} is filed at {Point} of job {Job} ({Status})")]
    public static partial void Filed(ILogger logger, string capture, string job, string point, string status);

    [LoggerMessage(4002, LogLevel.Error, "Record {Capture} of job {Job} could not be filed; its journal is kept and the next start tries again")]
    public static partial void NotFiled(ILogger logger, string capture, string job, Exception e);

    [LoggerMessage(4003, LogLevel.Error, "The pictures of record {Capture} could not be drawn")]
    public static partial void NotDrawn(ILogger logger, string capture, Exception e);

    [LoggerMessage(4004, LogLevel.Error, "Capture {Capture}, which was running when the station stopped, could not be recovered")]
    public static partial void NotRecovered(ILogger logger, string capture, Exception e);
}
