using Handspun.Jobs.Lengths;
using Handspun.Jobs.Limits;
using Handspun.Metrology.Decision;

namespace Handspun.Jobs.Records;

/// <summary>A record in one plain sentence.</summary>
public static class RecordSentence
{
    /// <summary>What was found, and what it means against the limit.</summary>
    public static string Of(CaptureRecord record, LengthUnit unit)
    {
        if (record.Figures.InWords(unit) is { } words)
        {
            return words;
        }

        if (Value(record, unit) is not { } value)
        {
            return record.Missing ?? "The capture gave no result.";
        }

        if (record.Figures.NotJudged is { } reason)
        {
            return $"{value}. {reason}";
        }

        if (record.Limit is not { } limit)
        {
            return $"{value}. There is no limit to hold it against.";
        }

        var bounds = LimitSentence.Bounds(limit, unit);
        return record.Verdict switch
        {
            Verdict.Within => $"{value}: within the limit ({bounds}).",
            Verdict.Over => $"{value}: over the limit ({bounds}).",
            _ => $"{value}: too close to call, the limit ({bounds}) lies inside the uncertainty. {record.Figures.SurerBy}",
        };
    }

    /// <summary>The value that is held against the limit, with its uncertainty; null where there is none.</summary>
    public static string? Value(CaptureRecord record, LengthUnit unit) =>
        record.Figures is { Value: { } value, ValueU95: { } uncertainty } ? LengthText.WithUncertainty(value, uncertainty, unit) : null;

    /// <summary>The verdict in words.</summary>
    public static string VerdictOf(CaptureRecord record) => record.Verdict switch
    {
        Verdict.Within => "within the limit",
        Verdict.Over => "over the limit",
        Verdict.Undecided => "too close to call",
        _ when record.Status != RecordStatus.Complete => "no result",
        _ => record.Figures.NotJudged is null ? "no limit to hold it against" : "not held against a limit",
    };
}
