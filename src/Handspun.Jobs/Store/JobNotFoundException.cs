namespace Handspun.Jobs.Store;

/// <summary>A job, point or record that was named is not there.</summary>
/// <param name="sentence">What is not there and what to do.</param>
public sealed class JobNotFoundException(string sentence) : Exception(sentence)
{
    /// <summary>There is no job of that number.</summary>
    public static JobNotFoundException Job(string number) => new($"There is no job '{number}': open it first, or pick one from the list of jobs.");

    /// <summary>The job has no such point.</summary>
    public static JobNotFoundException Point(string job, string point) => new($"Job {job} has no point '{point}': the job's page lists its points.");
}
