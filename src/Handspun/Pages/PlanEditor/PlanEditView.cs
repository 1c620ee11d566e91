using Handspun.Pages.Plans;

namespace Handspun.Pages.PlanEditor;

/// <summary>The page of one plan: its steps in order, and what can be done with them.</summary>
public sealed record PlanEditView
{
    /// <summary>The plan in addresses.</summary>
    public required string Code { get; init; }

    /// <summary>Its name.</summary>
    public required string Title { get; init; }

    /// <summary>What it is for.</summary>
    public required string About { get; init; }

    /// <summary>Whether it is the shop's own and can be changed.</summary>
    public required bool IsOwn { get; init; }

    /// <summary>Its steps, in order.</summary>
    public required IReadOnlyList<PlanStepLine> Steps { get; init; }

    /// <summary>Its parts, in order.</summary>
    public required IReadOnlyList<PlanPartLine> Parts { get; init; }

    /// <summary>The points that no step has yet.</summary>
    public required IReadOnlyList<Choice> Points { get; init; }

    /// <summary>The tag of the text that the page shows.</summary>
    public required string Seen { get; init; }

    /// <summary>What was typed and what is wrong.</summary>
    public required FormState Form { get; init; }
}

/// <summary>A step in the list of a plan.</summary>
/// <param name="Code">The step in addresses.</param>
/// <param name="Title">Its name.</param>
/// <param name="Kind">What is done in it, in a word.</param>
/// <param name="Note">What it waits for, and its limit; empty for neither.</param>
/// <param name="IsGate">Whether what comes after waits for its verdict.</param>
public sealed record PlanStepLine(string Code, string Title, string Kind, string Note, bool IsGate);

/// <summary>A part in the list of a plan.</summary>
/// <param name="Code">Its name in data.</param>
/// <param name="Name">What it is and where it sits.</param>
/// <param name="Faces">What is to be noted of how it faced; empty where nothing is.</param>
public sealed record PlanPartLine(string Code, string Name, string Faces);

/// <summary>The form of one step.</summary>
public sealed record PlanStepFormView
{
    /// <summary>The plan in addresses.</summary>
    public required string Plan { get; init; }

    /// <summary>Its name.</summary>
    public required string PlanTitle { get; init; }

    /// <summary>The step in addresses.</summary>
    public required string Code { get; init; }

    /// <summary>Its name as it stands.</summary>
    public required string Title { get; init; }

    /// <summary>Its kind as a code.</summary>
    public required string Kind { get; init; }

    /// <summary>Its place in the plan, from 1.</summary>
    public required int Place { get; init; }

    /// <summary>How many steps there are.</summary>
    public required int Steps { get; init; }

    /// <summary>Its point's own name, how and limit; null where it measures nothing.</summary>
    public PointWords? Point { get; init; }

    /// <summary>The steps above it.</summary>
    public required IReadOnlyList<Choice> Above { get; init; }

    /// <summary>The tag of the text that the page shows.</summary>
    public required string Seen { get; init; }

    /// <summary>What stands in the fields, and what is wrong.</summary>
    public required FormState Form { get; init; }

    /// <summary>What is wrong, one sentence a field.</summary>
    public required IReadOnlyDictionary<string, string> Errors { get; init; }

    /// <summary>Whether somebody else changed the plan since the form was opened.</summary>
    public bool IsMeanwhile { get; init; }
}

/// <summary>What a measuring point says by itself.</summary>
/// <param name="Title">Its name.</param>
/// <param name="How">How it is measured.</param>
/// <param name="Limit">What it is held against; null where that is nothing.</param>
public sealed record PointWords(string Title, string How, string? Limit);

/// <summary>The page with a plan's text.</summary>
/// <param name="Code">The plan in addresses.</param>
/// <param name="Text">The text, as it stands or as it was typed.</param>
/// <param name="IsOwn">Whether it can be changed.</param>
/// <param name="Seen">The tag of the text that is changed.</param>
/// <param name="Problems">What is wrong, with the lines; empty where nothing is.</param>
/// <param name="Now">What stands in the file, where somebody else changed it meanwhile; null where nobody did.</param>
/// <param name="Sentence">What happened; null where nothing did.</param>
public sealed record PlanTextView(string Code, string Text, bool IsOwn, string Seen, IReadOnlyList<LineProblem> Problems, string? Now, string? Sentence);

/// <summary>What is wrong in a line of a text.</summary>
/// <param name="Line">From 1; null where it is in none.</param>
/// <param name="Quoted">The line itself; null where it is in none.</param>
/// <param name="Sentence">What is wrong and what to do.</param>
public sealed record LineProblem(int? Line, string? Quoted, string Sentence);
