using Handspun.Jobs.Lengths;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Jobs.Standing;

namespace Handspun.Jobs.Reports;

/// <summary>One result of a job with all that it rests on.</summary>
public sealed record ReportedResult
{
    /// <summary>The point's name in data.</summary>
    public required string Point { get; init; }

    /// <summary>The point's name for people.</summary>
    public required string Title { get; init; }

    /// <summary>The record; also the name of its picture.</summary>
    public required string Record { get; init; }

    /// <summary>What the value is called.</summary>
    public required string ValueTitle { get; init; }

    /// <summary>The value with its uncertainty and unit.</summary>
    public required string Value { get; init; }

    /// <summary>What it says against the limit of today.</summary>
    public required ReportVerdict Verdict { get; init; }

    /// <summary>The limit: what is allowed, its condition, where it comes from, who confirmed it; empty where there is none.</summary>
    public required IReadOnlyList<Figure> Limit { get; init; }

    /// <summary>What the value rests on and what else was found, in the words of its kind.</summary>
    public required IReadOnlyList<Figure> Figures { get; init; }

    /// <summary>The gauge, its check, and when it was measured.</summary>
    public required IReadOnlyList<Figure> Proof { get; init; }

    /// <summary>What makes it less sure than it looks, one sentence each.</summary>
    public required IReadOnlyList<string> Warnings { get; init; }

    /// <summary>The result that counts at a point; null where none does or it has no value.</summary>
    public static ReportedResult? Of(JobPoint point, LengthUnit unit, ReportClock clock)
    {
        var standing = StandingVerdict.Of(point);
        return standing.Record is { } record && RecordSentence.Value(record, unit) is { } value
            ? new()
            {
                Point = point.Code,
                Title = point.Title,
                Record = record.Id,
                ValueTitle = record.Figures.ValueTitle,
                Value = value,
                Verdict = ReportVerdict.Of(standing.Verdict, record, standing.Limit, unit),
                Limit = standing.Limit is { } limit ? [.. LimitLines(limit, record, unit, clock)] : [],
                Figures = [.. record.Figures.ToShow(unit)],
                Proof = [.. ProofLines(point, record, unit, clock)],
                // That of the limit is said with the verdict, of the limit as it is today.
                Warnings = [.. record.Warnings.Where(warning => warning.Code != RecordWarning.LimitUnconfirmed.Code).Select(warning => warning.Sentence)],
            }
            : null;
    }

    private static IEnumerable<Figure> LimitLines(Limit limit, CaptureRecord record, LengthUnit unit, ReportClock clock)
    {
        yield return new("Allowed", LimitSentence.Bounds(limit, unit));
        if (LimitCondition.InWords(limit) is { } condition)
        {
            yield return new("Condition", condition);
        }

        yield return new("Source", limit.Source);
        yield return new("Confirmed", limit.ConfirmedBy is { } name
            ? limit.ConfirmedAt is { } at ? $"by {name}, {clock.Day(at)}" : $"by {name}"
            : "NOT CONFIRMED by anybody");
        if (!limit.AllowsTheSameAs(record.Limit))
        {
            yield return new("When it was measured", record.Limit is { } then
                ? $"held against {LimitSentence.Bounds(then, unit)}: {RecordSentence.VerdictOf(record)}"
                : "there was no limit");
        }
    }

    private static IEnumerable<Figure> ProofLines(JobPoint point, CaptureRecord record, LengthUnit unit, ReportClock clock)
    {
        yield return new("Measured", clock.Minute(record.At));
        yield return new("Gauge", record.Gauge.Name);
        foreach (var line in GaugeLines.Of(record, unit, clock))
        {
            yield return line;
        }

        yield return new("Record", record.Id);
        var others = point.Records.Count(other => other.Id != record.Id);
        if (others > 0)
        {
            yield return new("Besides", others == 1 ? "one other record, which does not count" : $"{others} other records, which do not count");
        }
    }
}
