namespace Handspun.Pages;

/// <summary>Why a page cannot be shown.</summary>
/// <param name="Status">The HTTP status, such as 404.</param>
/// <param name="Title">What happened, in a few words.</param>
/// <param name="Sentence">What to do now.</param>
public sealed record ProblemView(int Status, string Title, string Sentence);
