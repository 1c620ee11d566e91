using Handspun.Jobs.History;
using Handspun.Metrology.Decision;

namespace Handspun.Wire;

/// <summary>A bike over the years, and where it lies in its kind; lengths in millimetres.</summary>
internal sealed record HistoryMessage(BikeMessage Bike, IReadOnlyList<PastJobMessage> Jobs, IReadOnlyList<PointHistoryMessage> Points)
{
    public static HistoryMessage Of(BikeHistory history, IReadOnlyDictionary<string, KindSpread> kind) => new(
        BikeMessage.Of(history.Bike),
        [.. history.Jobs.Select(job => new PastJobMessage(job.Number, job.Title, job.OpenedAt))],
        [.. history.Points.Select(point => new PointHistoryMessage(point.Code, point.Title, [.. point.Results.Select(PastResultMessage.Of)], KindMessage.Of(kind.GetValueOrDefault(point.Code))))]);
}

/// <summary>A job of the bike.</summary>
internal sealed record PastJobMessage(string Job, string Title, DateTimeOffset OpenedAt);

/// <summary>What counts at one point in each job, oldest first; no kind where too few other bikes were measured.</summary>
internal sealed record PointHistoryMessage(string Point, string Title, IReadOnlyList<PastResultMessage> Results, KindMessage? Kind);

/// <summary>A result that counts in its job, against the job's limit.</summary>
internal sealed record PastResultMessage(string Job, string Record, DateTimeOffset At, double ValueMm, double ValueU95Mm, string? Verdict, LimitMessage? Limit)
{
    public static PastResultMessage Of(PastResult result)
    {
        var record = result.Verdict.Record!;
        return new(
            result.Job, record.Id, record.At, record.Figures.Value!.Value.Millimetres, record.Figures.ValueU95!.Value.Millimetres,
            result.Verdict.Verdict is { } verdict ? VerdictCode.Of(verdict) : null, LimitMessage.Of(result.Verdict.Limit));
    }
}

/// <summary>The other bikes of the same make and model.</summary>
internal sealed record KindMessage(int Bikes, double LowerQuartileMm, double MedianMm, double UpperQuartileMm, int Below, int Above)
{
    public static KindMessage? Of(KindSpread? spread) => spread is null ? null
        : new(spread.Bikes, spread.LowerQuartile.Millimetres, spread.Median.Millimetres, spread.UpperQuartile.Millimetres, spread.Below, spread.Above);
}
