using Handspun.Jobs.Points;
using Handspun.Metrology.Runout;

namespace Handspun.Capture.Methods;

/// <summary>How points of one kind are measured: what shows that a capture has begun, what its readings say so far, when they are enough.</summary>
/// <remarks>It keeps no state: the same for a live capture, a replayed one and one that a crash cut short. A new kind is a folder beside <c>Runout</c> and a line in <see cref="CaptureMethods"/>.</remarks>
public interface ICaptureMethod
{
    /// <summary>The kind of point that it measures.</summary>
    PointKind Kind { get; }

    /// <summary>How patient the bay is with it.</summary>
    CapturePace Pace { get; }

    /// <summary>What the hand and the screen are told.</summary>
    MethodWords Words { get; }

    /// <summary>Turns, cycles or passes that are usually enough.</summary>
    double UsuallyWanted { get; }

    /// <summary>Whether a mark of the mechanic says anything: where a shaft turns it does.</summary>
    bool TakesMarks => true;

    /// <summary>What is known before the first reading.</summary>
    CaptureFinding Nothing { get; }

    /// <summary>Whether a stretch of readings shows that something moves under the gauge.</summary>
    /// <param name="seconds">When each was taken, in seconds; never decreasing.</param>
    /// <param name="millimetres">What each was.</param>
    /// <param name="gauge">What is known of the gauge.</param>
    bool Moves(ReadOnlySpan<double> seconds, ReadOnlySpan<double> millimetres, GaugeTraits gauge);

    /// <summary>What the readings of a finished capture say.</summary>
    /// <param name="readings">The readings so far; times in seconds from the start of the capture.</param>
    /// <param name="gauge">What is known of the gauge.</param>
    /// <param name="wish">What was asked for.</param>
    CaptureFinding Measure(RotationCapture readings, GaugeTraits gauge, MethodWish wish);

    /// <summary>Looks at one capture while it goes on: given all its readings so far, several times a second, it says what they say.</summary>
    /// <remarks>A method whose measurement costs much gives one that goes on from look to look.</remarks>
    Func<RotationCapture, CaptureFinding> Follow(GaugeTraits gauge, MethodWish wish) => readings => Measure(readings, gauge, wish);
}

/// <summary>What is asked of a method.</summary>
/// <param name="Wanted">Turns, cycles or passes that are enough.</param>
/// <param name="Setup">What was said of the point; null where nothing was.</param>
public readonly record struct MethodWish(double Wanted, PointSetup? Setup = null);
