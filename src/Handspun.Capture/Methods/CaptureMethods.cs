using Handspun.Capture.Methods.Bore;
using Handspun.Capture.Methods.EndPlay;
using Handspun.Capture.Methods.Lift;
using Handspun.Capture.Methods.Outside;
using Handspun.Capture.Methods.Runout;
using Handspun.Jobs.Points;

namespace Handspun.Capture.Methods;

/// <summary>The kinds of points that a gauge can measure.</summary>
public static class CaptureMethods
{
    /// <summary>All methods, one a kind.</summary>
    public static IReadOnlyList<ICaptureMethod> All { get; } = [new RunoutCapture(), new EndPlayCapture(), new BoreCapture(), new BodyCapture(), new LiftCapture()];

    /// <summary>The method for a kind of point; null where its points are typed.</summary>
    public static ICaptureMethod? Find(PointKind kind) => All.FirstOrDefault(method => method.Kind == kind);

    /// <summary>The method for a kind of point.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Points of that kind are typed.</exception>
    public static ICaptureMethod For(PointKind kind) =>
        Find(kind) ?? throw new ArgumentOutOfRangeException(nameof(kind), kind, "Points of this kind are not measured with a gauge.");
}
