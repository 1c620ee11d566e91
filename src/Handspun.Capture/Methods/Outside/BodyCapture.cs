using Handspun.Capture.Methods.Bore;
using Handspun.Jobs.Points;
using Handspun.Metrology.Bore;
using Handspun.Metrology.Motion;
using Handspun.Metrology.Runout;

namespace Handspun.Capture.Methods.Outside;

/// <summary>The size of a round body across: a hand rolls it through under a gauge that was set on a reference, several times past its largest size.</summary>
internal sealed class BodyCapture : ICaptureMethod
{
    /// <inheritdoc/>
    public PointKind Kind => PointKind.OutsideSize;

    /// <inheritdoc/>
    public CapturePace Pace { get; } = new();

    /// <inheritdoc/>
    public double UsuallyWanted => 6;

    /// <inheritdoc/>
    public bool TakesMarks => false;

    /// <inheritdoc/>
    public CaptureFinding Nothing { get; } = new BoreFinding(new BoreResult { Status = BoreStatus.TooShort, Readings = 0, Outside = true }, null);

    /// <inheritdoc/>
    public MethodWords Words { get; } = new()
    {
        Waiting = "Waiting for the body to roll",
        Running = "Rolling",
        Again = "Roll it through again for a second record",
        SoFar = "Size so far",
        Counted = "passes",
        HowToStart = "Lay the body on the table and roll it slowly through under the gauge and back, three times. The capture starts by itself.",
        HowToRepeat = "Roll it through again for another record; the newest counts.",
        AfterTouch = "The gauge moved, but the body was not rolled through. Roll it slowly past its largest size and back, three times.",
        GaugeGone = "The gauge is gone: plug it in again, see that its zero still holds, then roll the body through again.",
        Enough = "Enough. Let the body lie.",
        NotRunning = "roll the body through, or start a capture by hand",
    };

    /// <inheritdoc/>
    public bool Moves(ReadOnlySpan<double> seconds, ReadOnlySpan<double> millimetres, GaugeTraits gauge) =>
        ShaftMotion.MovesAnywhere(seconds, millimetres, gauge.Resolution);

    /// <inheritdoc/>
    public CaptureFinding Measure(RotationCapture readings, GaugeTraits gauge, MethodWish wish)
    {
        var setup = wish.Setup as BodySetup;
        var settings = BoreCapture.SettingsOf(setup, wish.Wanted) with { Outside = true };
        return new BoreFinding(BoreMethod.Measure(readings.Seconds.Span, readings.Millimetres.Span, gauge, settings), setup);
    }
}
