namespace Handspun.Jobs.Records;

/// <summary>The words for record states in data.</summary>
public static class RecordCodes
{
    /// <summary><c>ok</c> or <c>incomplete</c>.</summary>
    public static string Of(RecordStatus status) => status == RecordStatus.Complete ? "ok" : "incomplete";

    /// <summary>Why a capture ended, such as <c>stood-still</c>.</summary>
    public static string Of(CaptureEnding ending) => ending switch
    {
        CaptureEnding.Enough => "enough",
        CaptureEnding.StoodStill => "stood-still",
        CaptureEnding.ByHand => "by-hand",
        CaptureEnding.GaugeLost => "gauge-lost",
        CaptureEnding.TooLong => "too-long",
        CaptureEnding.StationStopped => "station-stopped",
        CaptureEnding.Typed => "typed",
        CaptureEnding.WorkedOut => "worked-out",
        _ => throw new ArgumentOutOfRangeException(nameof(ending), ending, "No such ending."),
    };
}
