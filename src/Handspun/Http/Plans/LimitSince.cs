using Handspun.Jobs.Lengths;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Records;
using Handspun.Metrology.Decision;
using Handspun.Pages;

namespace Handspun.Http.Plans;

/// <summary>What became of a limit since a record was held against it. The record keeps its own; the page says what holds today.</summary>
internal static class LimitSince
{
    /// <summary>The warnings of a record, with what was confirmed or changed since.</summary>
    /// <param name="record">The record.</param>
    /// <param name="now">The limit of today; null where there is none.</param>
    /// <param name="unit">The unit of lengths.</param>
    public static IReadOnlyList<string> Warnings(CaptureRecord record, Limit? now, LengthUnit unit)
    {
        var isSame = now?.AllowsTheSameAs(record.Limit) == true;
        var kept = record.Warnings.Where(warning => !(isSame && now!.Confirmed && warning.Code == RecordWarning.LimitUnconfirmed.Code)).Select(warning => warning.Sentence);
        return [.. kept, .. isSame || RecordVerdict.Of(record.Figures, now) is not { } decided ? Enumerable.Empty<string>() : [Changed(now!, decided.Verdict, unit)]];
    }

    private static string Changed(Limit now, Verdict verdict, LengthUnit unit) =>
        $"The limit was changed since: {LimitSentence.Bounds(now, unit)}{(now.Confirmed ? "" : ", not confirmed")}. Against that: {VerdictWords.Of(ViewsOfJobs.VerdictOf(verdict)).ToLowerInvariant()}.";
}
