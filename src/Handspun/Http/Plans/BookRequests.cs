using Handspun.Jobs.Book.Acts;

namespace Handspun.Http.Plans;

/// <summary>What is done with a step.</summary>
/// <param name="Act"><c>tick, untick, skip, take-up-again, go-on</c> or <c>stop</c>.</param>
/// <param name="By">Who does it.</param>
/// <param name="Why">The reason, for all but a tick.</param>
/// <param name="Words">What is to be remembered of a tick.</param>
/// <param name="Record">The record that a decision at a gate is about; empty for none.</param>
internal sealed record StepRequest(string? Act, string? By, string? Why = null, string? Words = null, string? Record = null);

/// <summary>What was found.</summary>
internal sealed record FindingRequest(
    string? By, IReadOnlyList<string>? Signs = null, string? Words = null, string? Place = null, string? Step = null, string? Part = null, string? NewPart = null, string? Choice = null, string? Why = null)
{
    public TypedFinding Read() => new() { Signs = Signs ?? [], Words = Words, Place = Place, Step = Step, Part = Part, NewPart = NewPart, Choice = Choice, Why = Why };
}

/// <summary>A part that joins the list.</summary>
internal sealed record PartRequest(string? By, string? Title, string? Place = null);

/// <summary>How a part sat.</summary>
internal sealed record FacedRequest(string? By, string? Faced);

/// <summary>What becomes of a part: <c>keep, replace</c> or <c>measure-again</c>.</summary>
internal sealed record DecisionRequest(string? By, string? Choice, string? Why);

/// <summary>Closing a job or taking it up again.</summary>
internal sealed record CloseRequest(string? By, string? Why = null);
