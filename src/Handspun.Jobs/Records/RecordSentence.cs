using Handspun.Jobs.Lengths;
using Handspun.Jobs.Limits;
using Handspun.Metrology.Decision;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Records;

/// <summary>A record in one plain sentence.</summary>
public static class RecordSentence
{
    /// <summary>What was found, and what it means against the limit.</summary>
    public static string Of(CaptureRecord record, LengthUnit unit)
    {
        if (Tir(record, unit) is not { } tir)
        {
            return record.Missing ?? "The capture gave no result.";
        }

        if (record.Limit is not { } limit)
        {
            return $"{tir}. There is no limit to hold it against.";
        }

        var bounds = LimitSentence.Bounds(limit, unit);
        return record.Verdict switch
        {
            Verdict.Within => $"{tir}: within the limit ({bounds}).",
            Verdict.Over => $"{tir}: over the limit ({bounds}).",
            _ => $"{tir}: too close to call, the limit ({bounds}) lies inside the uncertainty. Measure again with more turns or a finer gauge.",
        };
    }

    /// <summary>The runout with its uncertainty; null where there is none.</summary>
    public static string? Tir(CaptureRecord record, LengthUnit unit) =>
        record.Figures is { TirMillimetres: { } tir, TirU95Millimetres: { } uncertainty }
            ? LengthText.WithUncertainty(Length.FromMillimetres(tir), Length.FromMillimetres(uncertainty), unit)
            : null;

    /// <summary>The verdict in words.</summary>
    public static string VerdictOf(CaptureRecord record) => record.Verdict switch
    {
        Verdict.Within => "within the limit",
        Verdict.Over => "over the limit",
        Verdict.Undecided => "too close to call",
        _ => record.Status == RecordStatus.Complete ? "no limit to hold it against" : "no result",
    };
}
