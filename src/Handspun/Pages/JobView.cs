using Handspun.Pages.Plans;

namespace Handspun.Pages;

/// <summary>One job: the bike, what to heed, and its points with their records.</summary>
public sealed record JobView
{
    /// <summary>The job in addresses.</summary>
    public required string Id { get; init; }

    /// <summary>The job's number as the shop says it.</summary>
    public required string Number { get; init; }

    /// <summary>What the job is about.</summary>
    public required string Title { get; init; }

    /// <summary>Year, make and model in one line.</summary>
    public required string Bike { get; init; }

    /// <summary>More about the bike and the job, label and value, in the order to be shown: odometer, VIN, customer, opened.</summary>
    public required IReadOnlyList<Fact> Facts { get; init; }

    /// <summary>What must be done before the first spin, one sentence each; may be empty.</summary>
    public required IReadOnlyList<string> Cautions { get; init; }

    /// <summary>Whether somebody already said that all of it is done.</summary>
    public required bool CautionsRead { get; init; }

    /// <summary>The station's gauges.</summary>
    public required IReadOnlyList<string> Gauges { get; init; }

    /// <summary>The points of the plan, in order.</summary>
    public required IReadOnlyList<PointView> Points { get; init; }

    /// <summary>What both shaft ends say together; null where the job does not take both.</summary>
    public CrankView? Crank { get; init; }

    /// <summary>Points that can be added to the job, in order.</summary>
    public IReadOnlyList<Choice> MorePoints { get; init; } = [];

    /// <summary>The plan; null for a job without one.</summary>
    public PlanView? Plan { get; init; }

    /// <summary>What was found, newest first.</summary>
    public IReadOnlyList<FindingView> Findings { get; init; } = [];

    /// <summary>The parts, in order.</summary>
    public IReadOnlyList<PartLine> Parts { get; init; } = [];

    /// <summary>The end of the job.</summary>
    public required CloseView Close { get; init; }
}

/// <summary>One entry of a list to choose from.</summary>
/// <param name="Id">What is sent.</param>
/// <param name="Text">What is shown.</param>
public sealed record Choice(string Id, string Text);

/// <summary>A label and a value.</summary>
/// <param name="Label">Such as <c>Odometer</c>.</param>
/// <param name="Value">Such as <c>23 410 mi</c>.</param>
public sealed record Fact(string Label, string Value);
