using Handspun.Jobs.Points;
using Handspun.Metrology.EndPlay;
using Handspun.Metrology.Motion;
using Handspun.Metrology.Runout;

namespace Handspun.Capture.Methods.EndPlay;

/// <summary>End play: a hand pushes the shaft along its axis to its stop, holds it, pulls it to the other stop and holds it, several times.</summary>
internal sealed class EndPlayCapture : ICaptureMethod
{
    /// <inheritdoc/>
    public PointKind Kind => PointKind.EndPlay;

    /// <inheritdoc/>
    /// <remarks>A stop may be held for two or three seconds; a hand that goes on after the last cycle starts no new capture.</remarks>
    public CapturePace Pace { get; } = new()
    {
        LeadIn = TimeSpan.FromSeconds(0.7),
        StandStill = TimeSpan.FromSeconds(4),
        Rest = TimeSpan.FromSeconds(2.5),
    };

    /// <inheritdoc/>
    public double UsuallyWanted => 3;

    /// <inheritdoc/>
    public bool TakesMarks => false;

    /// <inheritdoc/>
    public CaptureFinding Nothing { get; } = new EndPlayFinding(new EndPlayResult { Status = EndPlayStatus.TooShort, Readings = 0 }, default);

    /// <inheritdoc/>
    public MethodWords Words { get; } = new()
    {
        Waiting = "Waiting for a push",
        Running = "Pushing and pulling",
        Again = "Push and pull again for a second record",
        SoFar = "End play so far",
        Counted = "cycles",
        HowToStart = "Push the shaft along its axis to its stop, hold it for half a second, pull it to the other stop, hold it. Three times; the capture starts by itself.",
        HowToRepeat = "Push and pull again for another record; the newest counts.",
        AfterTouch = "Only one stop was held. Push the shaft to its stop and hold it for half a second, pull it to the other stop and hold it; three times.",
        GaugeGone = "The gauge is gone: plug it in again, then push and pull again.",
        Enough = "Enough. Let the shaft go.",
        NotRunning = "push the shaft, or start a capture by hand",
    };

    /// <inheritdoc/>
    public bool Moves(ReadOnlySpan<double> seconds, ReadOnlySpan<double> millimetres, GaugeTraits gauge) =>
        ShaftMotion.MovesAnywhere(seconds, millimetres, gauge.Resolution);

    /// <inheritdoc/>
    public CaptureFinding Measure(RotationCapture readings, GaugeTraits gauge, MethodWish wish)
    {
        var seconds = readings.Seconds.Span;
        var result = EndPlayMethod.Measure(seconds, readings.Millimetres.Span, gauge, new EndPlaySettings { CyclesWanted = (int)Math.Ceiling(wish.Wanted) });
        return new EndPlayFinding(result, HeldNow.Of(result, seconds));
    }
}
