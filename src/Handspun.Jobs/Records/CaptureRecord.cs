using Handspun.Jobs.Limits;
using Handspun.Metrology.Decision;

namespace Handspun.Jobs.Records;

/// <summary>Whether a record has a result.</summary>
public enum RecordStatus
{
    /// <summary>The capture gave no result; the record says what was missing.</summary>
    Incomplete,

    /// <summary>The result is there.</summary>
    Complete,
}

/// <summary>Why a capture ended.</summary>
public enum CaptureEnding
{
    /// <summary>It had enough turns.</summary>
    Enough,

    /// <summary>The shaft stood still.</summary>
    StoodStill,

    /// <summary>The mechanic ended it.</summary>
    ByHand,

    /// <summary>The gauge was gone for too long.</summary>
    GaugeLost,

    /// <summary>It went on for longer than any capture should.</summary>
    TooLong,

    /// <summary>The station stopped.</summary>
    StationStopped,

    /// <summary>There was none: what a tool showed was typed.</summary>
    Typed,

    /// <summary>There was none: the result is worked out of other records.</summary>
    WorkedOut,
}

/// <summary>One result at one point of one job, with all that proves it. It is never changed after it was made.</summary>
public sealed class CaptureRecord
{
    /// <summary>The capture's name; also the name of the folder with its journal and pictures.</summary>
    public required string Id { get; init; }

    /// <summary>The point that it belongs to.</summary>
    public int JobPointId { get; init; }

    /// <summary>When the capture started, by the wall clock.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>How long it lasted, in seconds.</summary>
    public required double Seconds { get; init; }

    /// <summary>Why it ended.</summary>
    public required CaptureEnding Ending { get; init; }

    /// <summary>Whether it has a result.</summary>
    public required RecordStatus Status { get; init; }

    /// <summary>What is missing, in one sentence; null where the result is there.</summary>
    public string? Missing { get; init; }

    /// <summary>The gauge, as it was at the time.</summary>
    public required RecordGauge Gauge { get; init; }

    /// <summary>The limit, as it was at the time; null where there was none.</summary>
    public Limit? Limit { get; init; }

    /// <summary>What was found, in the figures of the point's kind.</summary>
    public required ResultFigures Figures { get; init; }

    /// <summary>What the result says when it is held against the limit; null where there is no result or no limit.</summary>
    public Verdict? Verdict { get; init; }

    /// <summary>The probability, 0 to 1, that the true value is outside the limit.</summary>
    public double? ProbabilityOutside { get; init; }

    /// <summary>What makes the result less sure than it looks.</summary>
    public IReadOnlyList<RecordWarning> Warnings { get; init; } = [];

    /// <summary>Whether a capture stands behind it, with its journal and picture.</summary>
    public bool HasFiles => Ending is not (CaptureEnding.Typed or CaptureEnding.WorkedOut);
}

/// <summary>A warning on a record.</summary>
/// <param name="Code">Its name in data, such as <c>few-turns</c>.</param>
/// <param name="Sentence">One plain sentence.</param>
public sealed record RecordWarning(string Code, string Sentence)
{
    /// <summary>The limit has not been confirmed by anybody.</summary>
    public static RecordWarning LimitUnconfirmed { get; } =
        new("limit-unconfirmed", "Nobody has confirmed the limit: look it up in the machine's service manual before anything is decided by it.");

    /// <summary>The cable was out in the middle of the capture.</summary>
    public static RecordWarning GaugeGap { get; } =
        new("gauge-gap", "The gauge was gone for a while during the capture.");

    /// <summary>Lines came in that were no readings.</summary>
    public static RecordWarning UnreadableLines { get; } =
        new("unreadable-lines", "Some of what the gauge sent was not a reading and was left out.");

    /// <summary>The readings reach over nearly all of the gauge's travel.</summary>
    public static RecordWarning TravelUsedUp { get; } =
        new("travel-used-up", "The plunger went through nearly all of its travel and may have stood at its end: set it to the middle and measure again, or take a gauge with more travel.");
    /// <summary>A needle was watched.</summary>
    public static RecordWarning ReadByEye { get; } =
        new("read-by-eye", "Read by eye from a needle: nothing shows at which angle, or whether the needle was seen at its very ends.");

    /// <summary>The tool's own error is not known.</summary>
    public static RecordWarning ToolErrorUnknown { get; } =
        new("tool-error-unknown", "The tool's own error was not typed, so the uncertainty is of its division only.");
}
