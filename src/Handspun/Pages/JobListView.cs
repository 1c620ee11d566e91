namespace Handspun.Pages;

/// <summary>The page with all jobs.</summary>
/// <param name="Jobs">In the order to be shown: newest first.</param>
public sealed record JobListView(IReadOnlyList<JobListItem> Jobs);

/// <summary>One job in the list.</summary>
/// <param name="Id">The job in addresses.</param>
/// <param name="Number">The job's number as the shop says it, such as <c>1042</c>.</param>
/// <param name="Title">What the job is about.</param>
/// <param name="Bike">Year, make and model in one line.</param>
/// <param name="Odometer">What it showed, such as <c>23 410</c>.</param>
/// <param name="Opened">When it was opened, such as <c>25 Nov 2026</c>.</param>
/// <param name="Points">The points of its plan, in order.</param>
public sealed record JobListItem(
    string Id, string Number, string Title, string Bike, string Odometer, string Opened, IReadOnlyList<PointState> Points);

/// <summary>Where one point of a job stands.</summary>
/// <param name="Title">The point's name.</param>
/// <param name="Measured">Whether a record counts for it.</param>
/// <param name="Verdict">The verdict of the record that counts.</param>
public sealed record PointState(string Title, bool Measured, VerdictView Verdict);
