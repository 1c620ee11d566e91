using Handspun.Jobs.Limits;
using Handspun.Jobs.Records;
using Handspun.Metrology.Fits;

namespace Handspun.Jobs.Fits;

/// <summary>Makes the record of a clearance from the records that count for bore and body.</summary>
public static class ClearanceRecord
{
    /// <summary>The record.</summary>
    /// <param name="bore">The record of the bore, where it is smallest; it has a size.</param>
    /// <param name="body">The record of the body in it; it has a size.</param>
    /// <param name="limit">What the clearance is held against; null where there is no limit.</param>
    /// <param name="time">The wall clock.</param>
    /// <exception cref="ArgumentException">One of the records has no size.</exception>
    public static CaptureRecord Of(CaptureRecord bore, CaptureRecord body, Limit? limit, TimeProvider time)
    {
        ArgumentNullException.ThrowIfNull(bore);
        ArgumentNullException.ThrowIfNull(body);
        if (bore.Figures.AbsoluteSize is not { } inside || body.Figures.AbsoluteSize is not { } outside)
        {
            throw new ArgumentException("A clearance is worked out of two sizes.", nameof(bore));
        }

        var clearance = Clearance.Of(inside, outside);
        var figures = new ClearanceFigures
        {
            ClearanceMillimetres = clearance.Size.Millimetres,
            ClearanceU95Millimetres = clearance.U95.Millimetres,
            BoreMillimetres = inside.Size.Millimetres,
            BoreU95Millimetres = inside.U95.Millimetres,
            BodyMillimetres = outside.Size.Millimetres,
            BodyU95Millimetres = outside.U95.Millimetres,
            BoreDepthMillimetres = (bore.Figures as BoreFigures)?.DepthMillimetres,
            BoreClockHours = (bore.Figures as BoreFigures)?.ClockHours,
            BoreRecord = bore.Id,
            BodyRecord = body.Id,
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
