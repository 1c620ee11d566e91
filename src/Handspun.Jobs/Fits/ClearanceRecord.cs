using Handspun.Jobs.Limits;
using Handspun.Jobs.Records;
using Handspun.Metrology.Fits;

namespace Handspun.Jobs.Fits;

/// <summary>Makes the record of a clearance from the records that count for bore and body.</summary>
public static class ClearanceRecord
{
    /// <summary>The record.</summary>
    /// <param name="bore">The bore.</param>
    /// <param name="body">The body in it.</param>
    /// <param name="limit">What the clearance is held against; null where there is no limit.</param>
    /// <param name="time">The wall clock.</param>
    public static CaptureRecord Of(RecordedSize bore, RecordedSize body, Limit? limit, TimeProvider time)
    {
        var clearance = Clearance.Of(bore.Size, body.Size);
        var figures = new ClearanceFigures
        {
            ClearanceMillimetres = clearance.Size.Millimetres,
            ClearanceU95Millimetres = clearance.U95.Millimetres,
            BoreMillimetres = bore.Size.Size.Millimetres,
            BoreU95Millimetres = bore.Size.U95.Millimetres,
            BodyMillimetres = body.Size.Size.Millimetres,
            BodyU95Millimetres = body.Size.U95.Millimetres,
            BoreRecord = bore.Record,
            BodyRecord = body.Record,
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

/// <summary>A size with the record that it is from.</summary>
/// <param name="Record">The record's name.</param>
/// <param name="Size">The size.</param>
public readonly record struct RecordedSize(string Record, MeasuredSize Size);
