namespace Handspun.Jobs.Book;

/// <summary>The job was closed.</summary>
/// <param name="Left">The codes of the steps that were not through; may be empty.</param>
/// <param name="Why">Why they were left; null where none was.</param>
public sealed record JobClosed(IReadOnlyList<string> Left, string? Why) : Deed;

/// <summary>A closed job was taken up again.</summary>
/// <param name="Why">The reason.</param>
public sealed record JobReopened(string Why) : Deed;
