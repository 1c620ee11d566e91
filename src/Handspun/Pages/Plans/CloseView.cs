namespace Handspun.Pages.Plans;

/// <summary>The end of a job.</summary>
/// <param name="Job">The job's number.</param>
/// <param name="ClosedAt">When it was closed; null while it is open.</param>
/// <param name="Note">Who closed it, and why; null while it is open.</param>
/// <param name="Left">What is not through, by its titles.</param>
/// <param name="Version">The job's version that the page shows.</param>
/// <param name="Form">What was typed and what is wrong.</param>
public sealed record CloseView(string Job, string? ClosedAt, string? Note, IReadOnlyList<string> Left, int Version, FormState Form);
