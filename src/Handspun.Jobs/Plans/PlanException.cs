namespace Handspun.Jobs.Plans;

/// <summary>A plan that is not there or does not hold.</summary>
/// <param name="found">All that is wrong.</param>
public sealed class PlanException(IReadOnlyList<PlanProblem> found) : Exception(string.Join(Environment.NewLine, found))
{
    /// <summary>All that is wrong, with lines and keys.</summary>
    public IReadOnlyList<PlanProblem> Found { get; } = found;

    /// <summary>All that is wrong, a sentence each that names the file and the line where it can.</summary>
    public IReadOnlyList<string> Problems { get; } = [.. found.Select(problem => problem.ToString())];
}
