using Handspun.Jobs.Limits;
using Handspun.Jobs.Records;

namespace Handspun.Jobs.Points;

/// <summary>One measuring point of one job, with its limit and its records.</summary>
public sealed class JobPoint
{
    /// <summary>The store's key.</summary>
    public int Id { get; init; }

    /// <summary>The job that it belongs to.</summary>
    public int JobId { get; init; }

    /// <summary>Its place in the job, from 0.</summary>
    public int Place { get; init; }

    /// <summary>Its name in data and topics.</summary>
    public required string Code { get; init; }

    /// <summary>Its name on screens.</summary>
    public required string Title { get; init; }

    /// <summary>How it is measured.</summary>
    public PointKind Kind { get; init; }

    /// <summary>What was said of it before it is measured; null where nothing was.</summary>
    public PointSetup? Setup { get; set; }

    /// <summary>What its results are held against; null where there is no limit.</summary>
    public Limit? Limit { get; set; }

    /// <summary>The record that the mechanic picked to count; null lets the newest with a result count.</summary>
    public string? PickedRecordId { get; set; }

    /// <summary>Its records, in any order.</summary>
    public List<CaptureRecord> Records { get; init; } = [];

    /// <summary>The records, newest first.</summary>
    public IEnumerable<CaptureRecord> NewestFirst => Records.OrderByDescending(record => record.At).ThenByDescending(record => record.Id, StringComparer.Ordinal);

    /// <summary>The record that counts: the picked one, else the newest that has a result; null where there is none.</summary>
    public CaptureRecord? Counting =>
        Records.Find(record => record.Id == PickedRecordId) ?? NewestFirst.FirstOrDefault(record => record.Status == RecordStatus.Complete);
}
