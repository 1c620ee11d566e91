using Handspun.Jobs.Reports;

namespace Handspun.Pages.Reports;

/// <summary>What the report page shows.</summary>
/// <param name="Report">The report.</param>
/// <param name="Drawn">The records of which there is a picture.</param>
public sealed record ReportView(JobReport Report, IReadOnlySet<string> Drawn)
{
    /// <summary>The verdict's drawing for a code.</summary>
    public static VerdictView VerdictOf(string code) => code switch
    {
        "within" => VerdictView.Within,
        "over" => VerdictView.Over,
        "undecided" => VerdictView.Undecided,
        _ => VerdictView.None,
    };
}
