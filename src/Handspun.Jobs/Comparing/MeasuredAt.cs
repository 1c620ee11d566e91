using Handspun.Jobs.Points;
using Handspun.Jobs.Records;

namespace Handspun.Jobs.Comparing;

/// <summary>What was found at a point.</summary>
/// <param name="Point">The point's name in data.</param>
/// <param name="Title">Its name on screens.</param>
/// <param name="Kind">How the point is measured; what was typed there is of the same kind.</param>
/// <param name="Figures">What was found.</param>
public sealed record MeasuredAt(string Point, string Title, PointKind Kind, ResultFigures Figures)
{
    /// <summary>A record at its point.</summary>
    public static MeasuredAt Of(JobPoint point, CaptureRecord record) => new(point.Code, point.Title, point.Kind, record.Figures);

    /// <summary>Whether another is the same sort of length, so that one can be taken from the other: what is read by hand only at the same point.</summary>
    public bool IsLike(MeasuredAt other) => Kind == other.Kind && (Kind != PointKind.ByHand || Point == other.Point);
}
