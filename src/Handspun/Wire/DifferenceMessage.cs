using Handspun.Filing;
using Handspun.Jobs.Comparing;
using Handspun.Jobs.Lengths;

namespace Handspun.Wire;

/// <summary>What two records tell of a difference between them.</summary>
/// <param name="First">The first record.</param>
/// <param name="Second">The second record.</param>
/// <param name="DifferenceMm">The second result less the first; null where nothing can be said.</param>
/// <param name="DifferenceU95Mm">Its expanded uncertainty (k = 2).</param>
/// <param name="Told">Whether they differ by more than both can be wrong by; null where nothing can be said.</param>
/// <param name="Sentence">The same in words, or why nothing can be said.</param>
internal sealed record DifferenceMessage(ResultMessage First, ResultMessage Second, double? DifferenceMm, double? DifferenceU95Mm, bool? Told, string Sentence)
{
    public static DifferenceMessage Of(ComparedRecord first, ComparedRecord second, LengthUnit unit)
    {
        var difference = RecordDifference.Of(first.Measured, second.Measured);
        return new(
            ResultMessage.Of(first.Job.Number, first.Point.Code, first.Record, unit),
            ResultMessage.Of(second.Job.Number, second.Point.Code, second.Record, unit),
            difference is null ? null : Math.Round(difference.Value.Millimetres, 6),
            difference is null ? null : Math.Round(difference.U95.Millimetres, 6),
            difference?.IsTold,
            difference?.InWords(unit, "The first", "the second") ?? RecordDifference.Reason(first.Measured, second.Measured)!);
    }
}
