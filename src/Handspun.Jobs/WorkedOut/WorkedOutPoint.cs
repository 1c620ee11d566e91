using Handspun.Jobs.Cams;
using Handspun.Jobs.Fits;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;

namespace Handspun.Jobs.WorkedOut;

/// <summary>A point whose result nobody measures: it is worked out of the records that count at other points.</summary>
public abstract record WorkedOutPoint
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<WorkedOutPoint> All { get; } = [.. FitPair.All, .. CamPair.All];

    /// <summary>The point that gets the result; a job gets it by itself when there is one.</summary>
    public abstract MeasuringPoint Point { get; }

    /// <summary>The points that it is worked out of.</summary>
    public abstract IReadOnlyList<string> Of { get; }

    /// <summary>The record that is due; null where something is missing, or where the newest record says the same already.</summary>
    /// <param name="job">The job with its points and records.</param>
    /// <param name="time">The wall clock.</param>
    public abstract CaptureRecord? Due(Job job, TimeProvider time);

    /// <summary>The record that counts at a point of a job; null where there is none.</summary>
    protected static CaptureRecord? Counting(Job job, string code) => job.Points.Find(point => point.Code == code)?.Counting;

    /// <summary>This point in a job; null where the job does not have it yet.</summary>
    protected JobPoint? In(Job job) => job.Points.Find(point => point.Code == Point.Code);
}
