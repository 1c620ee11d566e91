namespace Handspun.Pages;

/// <summary>A bike over the years.</summary>
/// <param name="Job">The job that it was opened from.</param>
/// <param name="Bike">Year, make and model in one line.</param>
/// <param name="Alone">Why no other job is shown and what to do; null where the bike can be known again.</param>
/// <param name="Jobs">Its jobs, newest first.</param>
/// <param name="Points">Its points with a result.</param>
public sealed record HistoryView(string Job, string Bike, string? Alone, IReadOnlyList<PastJobView> Jobs, IReadOnlyList<PointHistoryView> Points);

/// <summary>A job of the bike.</summary>
/// <param name="Number">Its number, also in addresses.</param>
/// <param name="Title">What it is about.</param>
/// <param name="Opened">When it was opened.</param>
public sealed record PastJobView(string Number, string Title, string Opened);

/// <summary>One point over the years.</summary>
/// <param name="Id">The point in addresses.</param>
/// <param name="Title">Its name.</param>
/// <param name="Results">Newest first.</param>
/// <param name="Newest">The address where the newest stands beside the one before; empty with fewer than two.</param>
/// <param name="Kind">Where the newest lies among the shop's other bikes of the kind; null where they are too few.</param>
public sealed record PointHistoryView(string Id, string Title, IReadOnlyList<PastResultView> Results, string Newest, string? Kind);

/// <summary>A result that counts in its job.</summary>
/// <param name="Job">The job's number.</param>
/// <param name="At">When it was measured.</param>
/// <param name="Result">With its uncertainty and unit.</param>
/// <param name="Verdict">Against the job's limit.</param>
/// <param name="OnUnconfirmedLimit">Whether nobody has confirmed that limit.</param>
public sealed record PastResultView(string Job, string At, string Result, VerdictView Verdict, bool OnUnconfirmedLimit);
