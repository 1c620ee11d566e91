using Handspun.Jobs.Lengths;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Records;
using Handspun.Metrology.Decision;

namespace Handspun.Jobs.Reports;

/// <summary>A verdict as a report says it.</summary>
/// <remarks>
/// ISO 14253-1 knows three answers: conformity is proven, non-conformity is proven, or neither is (its words from memory). Each is
/// said in plain words first.
/// </remarks>
/// <param name="Verdict">The verdict; null where there is none.</param>
/// <param name="Code"><c>within</c>, <c>over</c>, <c>undecided</c> or <c>none</c>.</param>
/// <param name="Plain">In a few plain words, such as <c>Within the limit</c>.</param>
/// <param name="Proven">What is proven by the standard's rule; null where there is no verdict.</param>
/// <param name="Sentence">What that rests on, in a sentence or two.</param>
/// <param name="Provisional">What is to be minded where nobody has confirmed the limit; null where somebody has, or there is no verdict.</param>
public sealed record ReportVerdict(Verdict? Verdict, string Code, string Plain, string? Proven, string Sentence, string? Provisional)
{
    /// <summary>What is said of a limit that nobody has confirmed.</summary>
    public const string NotConfirmed = "LIMIT NOT CONFIRMED: nobody has looked it up in the service manual of this machine. The verdict is provisional until somebody does.";

    /// <summary>That of a result against a limit.</summary>
    public static ReportVerdict Of(Verdict? verdict, CaptureRecord record, Limit? limit, LengthUnit unit)
    {
        if (verdict is not { } known || limit is null)
        {
            return new(null, "none", "No verdict", null, "There is no limit to hold it against.", null);
        }

        var bounds = LimitSentence.Bounds(limit, unit);
        var provisional = limit.Confirmed ? null : NotConfirmed;
        var code = VerdictCode.Of(known);
        return known switch
        {
            Metrology.Decision.Verdict.Within => new(
                known, code, "Within the limit", "Conformity proven", $"The value with its whole uncertainty lies within the limit ({bounds}).", provisional),
            Metrology.Decision.Verdict.Over => new(
                known, code, limit.LowerMillimetres is null ? "Over the limit" : "Outside the limit", "Non-conformity proven",
                $"The value with its whole uncertainty lies outside the limit ({bounds}).", provisional),
            _ => new(
                known, code, "Too close to call", "Neither conformity nor non-conformity proven",
                $"The limit ({bounds}) lies inside the uncertainty of the value. {record.Figures.SurerBy}", provisional),
        };
    }

    /// <summary>All of it in one line: plain words, what is proven, and whether the limit is confirmed.</summary>
    public string Line => Proven is null ? Sentence : $"{Plain}: {LowerFirst(Proven)}{(Provisional is null ? "" : ", on a limit that is NOT CONFIRMED")}.";

    private static string LowerFirst(string text) => char.ToLowerInvariant(text[0]) + text[1..];
}
