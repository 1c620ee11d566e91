namespace Handspun.Bays;

internal static partial class BayDeskLog
{
    [LoggerMessage(4101, LogLevel.Warning, "The bay could not go on where it was: {Reason}")]
    public static partial void NotResumed(ILogger logger, string reason);

    [LoggerMessage(4102, LogLevel.Warning, "The bay did not go on to {Point}: {Reason}")]
    public static partial void NotStepped(ILogger logger, string point, string reason);
}
