namespace Handspun.Jobs.Plans;

/// <summary>A plan that is not there or does not hold.</summary>
/// <param name="problems">Each a sentence that names the file, the line and the key where it can.</param>
public sealed class PlanException(IReadOnlyList<string> problems) : Exception(string.Join(Environment.NewLine, problems))
{
    /// <summary>All that is wrong, one sentence each.</summary>
    public IReadOnlyList<string> Problems { get; } = problems;
}
