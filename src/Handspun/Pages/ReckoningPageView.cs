namespace Handspun.Pages;

/// <summary>The page with the reckonings of the trade.</summary>
/// <param name="Job">The job that it was opened from; null for none.</param>
/// <param name="Unit">The unit that is chosen: <c>in</c> or <c>mm</c>.</param>
/// <param name="Reckonings">In the order to be shown.</param>
public sealed record ReckoningPageView(string? Job, string Unit, IReadOnlyList<ReckoningView> Reckonings);

/// <summary>One reckoning.</summary>
/// <param name="Code">Its name in addresses.</param>
/// <param name="Title">What it answers.</param>
/// <param name="IsAsked">Whether it was asked for now.</param>
/// <param name="Fields">What is typed, with what was typed.</param>
/// <param name="Lines">The formulas, worked; empty where something is missing.</param>
/// <param name="Missing">What is missing or cannot be; null where nothing is.</param>
/// <param name="Cautions">What to heed, one sentence each.</param>
public sealed record ReckoningView(
    string Code, string Title, bool IsAsked, IReadOnlyList<SetupFieldView> Fields, IReadOnlyList<WorkedView> Lines, string? Missing, IReadOnlyList<string> Cautions);

/// <summary>A worked formula.</summary>
/// <param name="Formula">In words.</param>
/// <param name="Filled">With its numbers, the result and its uncertainty.</param>
/// <param name="IsAnswer">Whether it is what was asked for.</param>
public sealed record WorkedView(string Formula, string Filled, bool IsAnswer);
