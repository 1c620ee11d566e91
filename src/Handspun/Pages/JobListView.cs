namespace Handspun.Pages;

/// <summary>A page of jobs: the newest, or those that were searched for.</summary>
/// <param name="Jobs">In the order to be shown: newest first.</param>
/// <param name="Find">What was searched for; empty for all jobs.</param>
/// <param name="Count">How many jobs there are, or were found, in all.</param>
/// <param name="Newer">The address of the page before; null on the first.</param>
/// <param name="Older">The address of the page after; null on the last.</param>
public sealed record JobListView(IReadOnlyList<JobListItem> Jobs, string Find, int Count, string? Newer, string? Older)
{
    /// <summary>What was found, such as <c>3 jobs</c>.</summary>
    public string Found => Count == 1 ? "1 job" : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{Count} jobs");
}

/// <summary>One job in the list.</summary>
/// <param name="Id">The job in addresses.</param>
/// <param name="Number">The job's number as the shop says it, such as <c>1042</c>.</param>
/// <param name="Title">What the job is about.</param>
/// <param name="Bike">Year, make and model in one line.</param>
/// <param name="Odometer">What it showed, such as <c>23 410</c>; empty where nobody noted it.</param>
/// <param name="Opened">When it was opened, such as <c>25 Nov 2026</c>.</param>
/// <param name="Points">Those of its points that are to be shown, in order: all, or for a job with a plan those that were measured.</param>
/// <param name="Plan">How far its plan is, or that it is closed; null where there is nothing to say.</param>
/// <param name="IsStopped">Whether a gate stops it.</param>
public sealed record JobListItem(
    string Id, string Number, string Title, string Bike, string Odometer, string Opened, IReadOnlyList<PointState> Points, string? Plan, bool IsStopped);

/// <summary>Where one point of a job stands.</summary>
/// <param name="Title">The point's name.</param>
/// <param name="Measured">Whether a record counts for it.</param>
/// <param name="Verdict">The verdict of the record that counts, against the limit of today.</param>
/// <param name="OnUnconfirmedLimit">Whether nobody has confirmed that limit.</param>
public sealed record PointState(string Title, bool Measured, VerdictView Verdict, bool OnUnconfirmedLimit);
