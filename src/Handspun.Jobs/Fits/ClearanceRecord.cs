using Handspun.Jobs.Limits;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Metrology.Fits;

namespace Handspun.Jobs.Fits;

/// <summary>Makes the record of a clearance from the records that count for bore and body.</summary>
public static class ClearanceRecord
{
    /// <summary>The record that is due; null where a size is missing, or where the newest record rests on these two and this limit already.</summary>
    /// <param name="job">The job with its points and records.</param>
    /// <param name="pair">Bore and body.</param>
    /// <param name="time">The wall clock.</param>
    public static CaptureRecord? Due(Job job, FitPair pair, TimeProvider time)
    {
        var (bore, body) = (Counting(job, pair.Bore), Counting(job, pair.Body));
        if (bore?.Figures.AbsoluteSize is not { } inside || body?.Figures.AbsoluteSize is not { } outside)
        {
            return null;
        }

        var point = job.Points.Find(p => p.Code == pair.Clearance.Code);
        var limit = point is null ? pair.Clearance.ShippedLimit : point.Limit;
        return RestsOn(point, bore.Id, body.Id, limit) ? null : Made(inside, outside, bore.Id, body.Id, limit, time);
    }

    private static CaptureRecord? Counting(Job job, string code) => job.Points.Find(point => point.Code == code)?.Counting;

    private static bool RestsOn(JobPoint? point, string bore, string body, Limit? limit) =>
        point?.NewestFirst.FirstOrDefault() is { Figures: ClearanceFigures figures } newest && figures.BoreRecord == bore && figures.BodyRecord == body && newest.Limit == limit;

    private static CaptureRecord Made(MeasuredSize bore, MeasuredSize body, string boreRecord, string bodyRecord, Limit? limit, TimeProvider time)
    {
        var clearance = Clearance.Of(bore, body);
        var figures = new ClearanceFigures
        {
            ClearanceMillimetres = clearance.Size.Millimetres,
            ClearanceU95Millimetres = clearance.U95.Millimetres,
            BoreMillimetres = bore.Size.Millimetres,
            BoreU95Millimetres = bore.U95.Millimetres,
            BodyMillimetres = body.Size.Millimetres,
            BodyU95Millimetres = body.U95.Millimetres,
            BoreRecord = boreRecord,
            BodyRecord = bodyRecord,
        };
        var decision = RecordVerdict.Of(figures, limit);
        return new CaptureRecord
        {
            Id = RecordName.New(time),
            At = time.GetUtcNow(),
            Seconds = 0,
            Ending = CaptureEnding.WorkedOut,
            Status = RecordStatus.Complete,
            Gauge = new RecordGauge { Name = "bore and body", Profile = "worked-out", Port = "" },
            Limit = limit is null ? null : limit with { },
            Figures = figures,
            Verdict = decision?.Verdict,
            ProbabilityOutside = decision?.ProbabilityOutside,
            Warnings = [.. Warnings(clearance, limit)],
        };
    }

    private static IEnumerable<RecordWarning> Warnings(Clearance clearance, Limit? limit)
    {
        if (clearance.Kind != FitKind.Clearance)
        {
            yield return new(clearance.Kind == FitKind.Interference ? "interference" : "fit-undecided", clearance.Sentence);
        }

        if (limit is { Confirmed: false })
        {
            yield return RecordWarning.LimitUnconfirmed;
        }
    }
}
