using Handspun.Pages;

namespace Handspun.Commands;

/// <summary>A bike's history in lines of text.</summary>
internal static class HistoryLines
{
    /// <summary>Its jobs and its results, newest first, in the words of its page.</summary>
    public static IEnumerable<string> Of(HistoryView history)
    {
        yield return history.Bike;
        foreach (var job in history.Jobs)
        {
            yield return $"{job.Number}  {job.Opened}  {job.Title}";
        }

        if (history.Alone is { } alone)
        {
            yield return alone;
        }

        foreach (var point in history.Points)
        {
            yield return point.Title;
            foreach (var result in point.Results)
            {
                yield return $"  {result.At}  {result.Result}  {VerdictWords.Of(result.Verdict)}{(result.OnUnconfirmedLimit ? ", limit not confirmed" : "")} (job {result.Job})";
            }

            if (point.Kind is { } kind)
            {
                yield return $"  {kind}";
            }
        }
    }
}
