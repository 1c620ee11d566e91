using System.Globalization;

namespace Handspun.Jobs.Reports;

/// <summary>Times as a report writes them: in the shop's own zone, with the month in letters, so that day and month cannot be mixed up.</summary>
/// <param name="Zone">The shop's zone.</param>
/// <param name="Now">When the report is made.</param>
public sealed record ReportClock(TimeZoneInfo Zone, DateTimeOffset Now)
{
    /// <summary>Such as <c>25 Nov 2026</c>.</summary>
    public string Day(DateTimeOffset at) => Written(at, "d MMM yyyy");

    /// <summary>Such as <c>25 Nov 2026, 11:42</c>.</summary>
    public string Minute(DateTimeOffset at) => Written(at, "d MMM yyyy, HH:mm");

    // A line is not broken within a date.
    private string Written(DateTimeOffset at, string form) => TimeZoneInfo.ConvertTime(at, Zone).ToString(form, CultureInfo.InvariantCulture).Replace(' ', '\u00a0');
}
