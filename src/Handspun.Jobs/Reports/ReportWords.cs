namespace Handspun.Jobs.Reports;

/// <summary>The standing words of a job's report: titles and what stands in every one.</summary>
public static class ReportWords
{
    /// <summary>What it is.</summary>
    public const string Report = "Job report";

    /// <summary>What comes before it.</summary>
    public const string ManualFirst = "The service manual of this machine and the judgement of a licensed mechanic come before this report.";

    /// <summary>What ± means.</summary>
    public const string PlusMinus = "± is the expanded uncertainty (k = 2): about 95 times in 100, the true value lies that near.";

    /// <summary>How results are held against limits.</summary>
    public const string Rule = "Verdicts follow ISO 14253-1: conformity, and non-conformity as well, is proven only where the value with its whole uncertainty lies on one side of the limit.";

    /// <summary>What was found, on the customer's page.</summary>
    public const string Found = "What was found";

    /// <summary>What it means, on the customer's page.</summary>
    public const string Means = "What it means";

    /// <summary>What is advised, on the customer's page.</summary>
    public const string Advised = "What is advised";

    /// <summary>The results, one by one.</summary>
    public const string Results = "Results";

    /// <summary>Decisions at gates.</summary>
    public const string Decisions = "Decided on the way";

    /// <summary>Findings with their photos.</summary>
    public const string Findings = "Findings";

    /// <summary>What goes back where, and what becomes of it.</summary>
    public const string Parts = "Parts: what goes back where, and what becomes of them";

    /// <summary>Checks.</summary>
    public const string Checks = "Checks";

    /// <summary>What was not done.</summary>
    public const string Left = "Still open";

    /// <summary>Cautions.</summary>
    public const string Cautions = "Cautions";
}
