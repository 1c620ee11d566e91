using Handspun.Bays;
using Handspun.Capture.Bays;
using Handspun.Capture.Methods;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Plans;

namespace Handspun.Wire;

/// <summary>One point of the bay as a screen needs it when it opens or comes back.</summary>
internal sealed record BayMessage
{
    public required string Phase { get; init; }

    public required string Unit { get; init; }

    public string? Job { get; init; }

    public string? JobTitle { get; init; }

    public string? Bike { get; init; }

    public string? Point { get; init; }

    public string? PointTitle { get; init; }

    public string? Gauge { get; init; }

    public string? Capture { get; init; }

    public double? Wanted { get; init; }

    public string? Kind { get; init; }

    public WordsMessage? Words { get; init; }

    /// <summary>Whether a mark of the mechanic says anything at this point.</summary>
    public bool TakesMarks { get; init; }

    /// <summary>What was said of the point before it is measured, in words; null where nothing need be said.</summary>
    public string? Setup { get; init; }

    /// <summary>What of it changes from capture to capture, to be typed or chosen at the bay.</summary>
    public IReadOnlyList<SetupFieldMessage> Place { get; init; } = [];

    /// <summary>What to heed at this point beyond what is heeded in every job.</summary>
    public IReadOnlyList<string> Heed { get; init; } = [];

    /// <summary>What is said where the point is a gate of the job's plan; null where it is none.</summary>
    public BayGateMessage? Gate { get; init; }

    public LimitMessage? Limit { get; init; }

    public ProgressMessage? Progress { get; init; }

    public required TraceMessage Trace { get; init; }

    public ResultMessage? Result { get; init; }

    /// <summary>The step to the plan's next point that comes by itself; null where none comes.</summary>
    public NextMessage? Next { get; init; }

    /// <summary>The title of the point that a step of the bay came from; null where it can not be taken back.</summary>
    public string? Before { get; init; }

    /// <summary>What all gauges of the bay measure, the point given last at the end.</summary>
    public required IReadOnlyList<PlaceMessage> AtWork { get; init; }

    public required IReadOnlyList<GaugeStateMessage> Gauges { get; init; }

    public required IReadOnlyList<string> Cautions { get; init; }

    public bool CautionsRead { get; init; }

    public static string UnitCode(LengthUnit unit) => LengthText.Symbol(unit);
}

/// <summary>The point that the bay goes on to by itself, and when.</summary>
internal sealed record NextMessage(string Point, string PointTitle, DateTimeOffset At)
{
    public static NextMessage? Of(ComingStep? step) => step is null ? null : new(step.Point, step.PointTitle, step.At);
}

/// <summary>What one gauge of the bay measures.</summary>
internal sealed record PlaceMessage(string Gauge, string Job, string Point, string PointTitle)
{
    public static PlaceMessage Of(BayTask task) => new(task.Gauge.ToString(), task.Job, task.Point, task.PointTitle);
}

/// <summary>What the screen says of the kind of measurement.</summary>
internal sealed record WordsMessage(string Waiting, string Running, string Again, string SoFar, string Counted)
{
    public static WordsMessage Of(MethodWords words) => new(words.Waiting, words.Running, words.Again, words.SoFar, words.Counted);
}

/// <summary>Readings for a screen that was not there when they came.</summary>
internal sealed record TraceMessage(IReadOnlyList<double> T, IReadOnlyList<double> Mm);

/// <summary>What the screen says at a gate: what to tell the customer by the verdict, and the page where somebody decides.</summary>
internal sealed record BayGateMessage(string Address, string IfOver, string IfUndecided)
{
    public static BayGateMessage? Of(Job job, string point) => job.Plan?.Steps.FirstOrDefault(step => step.Gate && step.Point == point) is { } gate
        ? new($"/jobs/{job.Number}/steps/{gate.Code}", gate.IfOver ?? GateWords.Over, gate.IfUndecided ?? GateWords.Undecided)
        : null;
}
