using Handspun.Jobs.Bores;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Jobs.WorkedOut;

namespace Handspun.Jobs.Fits;

/// <summary>A body in its bore, as points of the catalogue: the four lifters, and both journals of the cam.</summary>
public sealed record FitPair : WorkedOutPoint
{
    private FitPair(MeasuringPoint point, string bore, string body) => (Point, Bore, Body) = (point, bore, body);

    /// <summary>All pairs.</summary>
    public static new IReadOnlyList<FitPair> All { get; } =
    [
        .. PointCatalogue.All.Where(point => point.Kind == PointKind.Clearance).Select(point => point.Code.StartsWith("lifter-", StringComparison.Ordinal)
            ? new FitPair(point, Other(point, "-bore-"), Other(point, "-body-"))
            : new FitPair(point, Other(point, "-bearing-bore-"), Other(point, "-journal-"))),
    ];

    /// <inheritdoc/>
    public override MeasuringPoint Point { get; }

    /// <summary>The bore's point.</summary>
    public string Bore { get; }

    /// <summary>The body's point.</summary>
    public string Body { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<string> Of => [Bore, Body];

    /// <inheritdoc/>
    public override CaptureRecord? Due(Job job, TimeProvider time)
    {
        var (bore, body, point) = (Narrowest(job), Counting(job, Body), In(job));
        if (bore?.Figures.AbsoluteSize is null || body?.Figures.AbsoluteSize is null)
        {
            return null;
        }

        var limit = point is null ? Point.ShippedLimit : point.Limit;
        var same = point?.NewestFirst.FirstOrDefault() is { Figures: ClearanceFigures last } newest && last.BoreRecord == bore.Id && last.BodyRecord == body.Id && newest.Limit == limit;
        return same ? null : ClearanceRecord.Of(bore, body, limit, time);
    }

    // The body must go through the bore's smallest place. A record that counts and is none of its places, a size that was typed say,
    // stands for the bore by itself.
    private CaptureRecord? Narrowest(Job job)
    {
        var counting = Counting(job, Bore);
        return counting?.Figures is BoreFigures && BoreAnswer.Of(job.Points.First(point => point.Code == Bore)) is { HasSize: true } answer
            && answer.Places.Any(at => at.Record.Id == counting.Id)
                ? answer.Places.First(at => at.Place == answer.Form.Smallest).Record
                : counting;
    }

    private static string Other(MeasuringPoint point, string words) => point.Code.Replace("-clearance-", words, StringComparison.Ordinal);
}
