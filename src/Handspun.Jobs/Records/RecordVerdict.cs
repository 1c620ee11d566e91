using Handspun.Jobs.Limits;
using Handspun.Metrology.Decision;

namespace Handspun.Jobs.Records;

/// <summary>Holds what was found against a limit.</summary>
public static class RecordVerdict
{
    /// <summary>The decision; null where there is no limit or no result.</summary>
    public static ConformityDecision? Of(ResultFigures figures, Limit? limit) =>
        limit is not null && figures is { Value: { } value, ValueU95: { } uncertainty }
            ? ConformityRule.Decide(value, uncertainty, limit.Tolerance)
            : null;
}
