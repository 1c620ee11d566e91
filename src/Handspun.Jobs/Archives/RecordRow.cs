using Handspun.Jobs.Lengths;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Metrology.Decision;

namespace Handspun.Jobs.Archives;

/// <summary>A record as one row of a table: lengths in millimetres, times in UTC; what is not known is empty.</summary>
public sealed record RecordRow
{
    /// <summary>The titles of the columns.</summary>
    public static IReadOnlyList<string> Columns { get; } =
    [
        "job", "point", "point_title", "kind", "record", "counts", "at", "status", "ended", "value_title", "value", "value_mm", "value_u95_mm", "verdict",
        "probability_outside", "limit_lower_mm", "limit_upper_mm", "limit_source", "limit_confirmed_by", "gauge", "warnings", "missing",
    ];

    /// <summary>The cells, in the order of the columns; each a text, a number, a time, a truth or null.</summary>
    public required IReadOnlyList<object?> Cells { get; init; }

    /// <summary>All records of a job, point by point, oldest first.</summary>
    public static IEnumerable<RecordRow> Of(Job job, LengthUnit unit) =>
        job.InOrder.SelectMany(point => point.NewestFirst.Reverse().Select(record => Of(job, point, record, unit)));

    private static RecordRow Of(Job job, JobPoint point, CaptureRecord record, LengthUnit unit) => new()
    {
        Cells =
        [
            job.Number, point.Code, point.Title, PointKindCodes.Of(record.Figures.Kind), record.Id, point.Counting?.Id == record.Id, record.At, RecordCodes.Of(record.Status),
            RecordCodes.Of(record.Ending), record.Figures.ValueTitle, RecordSentence.Value(record, unit), record.Figures.Value?.Millimetres, record.Figures.ValueU95?.Millimetres,
            record.Verdict is { } verdict ? VerdictCode.Of(verdict) : null, record.ProbabilityOutside, record.Limit?.LowerMillimetres, record.Limit?.UpperMillimetres,
            record.Limit?.Source, record.Limit?.ConfirmedBy, record.Gauge.Name, string.Join("; ", record.Warnings.Select(warning => warning.Code)), record.Missing,
        ],
    };
}
