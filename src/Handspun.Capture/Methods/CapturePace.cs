namespace Handspun.Capture.Methods;

/// <summary>How patient a bay is with one kind of capture. The defaults suit a hand on a rear wheel.</summary>
public sealed record CapturePace
{
    /// <summary>How long a stretch of readings is looked at to see that the capture has begun.</summary>
    public TimeSpan StartWindow { get; init; } = TimeSpan.FromSeconds(0.8);

    /// <summary>How much before that stretch the capture begins, so that the start is in it.</summary>
    public TimeSpan LeadIn { get; init; } = TimeSpan.FromSeconds(0.5);

    /// <summary>How long nothing may move, between two pushes of the hand, before the capture ends.</summary>
    public TimeSpan StandStill { get; init; } = TimeSpan.FromSeconds(2.5);

    /// <summary>How long nothing may move after a capture before the next one may start.</summary>
    public TimeSpan Rest { get; init; } = TimeSpan.FromSeconds(1.5);
}
