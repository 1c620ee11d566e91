using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.EndPlay;

/// <summary>Whether a capture gave an end play.</summary>
public enum EndPlayStatus
{
    /// <summary>The end play is known, with its uncertainty.</summary>
    Measured,

    /// <summary>Not both stops were held yet; there is no end play.</summary>
    TooShort,

    /// <summary>The capture cannot be used at all: too few readings, times that run backwards, values that are not numbers.</summary>
    Rejected,
}

/// <summary>One of the two ends of the shaft's axial movement.</summary>
public enum Stop
{
    /// <summary>The end at which the gauge reads low.</summary>
    Low,

    /// <summary>The end at which the gauge reads high.</summary>
    High,
}

/// <summary>One stretch in which the shaft was held still.</summary>
/// <param name="Stop">The end that it is nearer to.</param>
/// <param name="FirstReading">Its first reading, counted from 0.</param>
/// <param name="LastReading">Its last reading.</param>
/// <param name="Readings">How many readings between the two it rests on; the others were left out.</param>
/// <param name="Seconds">Its middle, in seconds of the capture.</param>
/// <param name="Millimetres">What the gauge showed on average, drift included.</param>
/// <param name="Counts">Whether it counts; where not, it ended short of the stop or was disturbed.</param>
public sealed record HeldStop(Stop Stop, int FirstReading, int LastReading, int Readings, double Seconds, double Millimetres, bool Counts);

/// <summary>What an end play measurement found, with all that a picture or a record needs to prove it.</summary>
public sealed record EndPlayResult
{
    /// <summary>Whether there is an end play.</summary>
    public required EndPlayStatus Status { get; init; }

    /// <summary>One plain sentence that says what is missing and what to do next; null where the end play was measured.</summary>
    public string? Missing { get; init; }

    /// <summary>Readings in the capture, those left out included.</summary>
    public required int Readings { get; init; }

    /// <summary>Cycles that count: pairs of one stop and the other.</summary>
    public int Cycles { get; init; }

    /// <summary>Cycles that were wanted.</summary>
    public int CyclesWanted { get; init; }

    /// <summary>Whether as many cycles were seen as wanted.</summary>
    public bool HasEnough => Status == EndPlayStatus.Measured && Cycles >= CyclesWanted;

    /// <summary>Axial movement between both stops, each held by hand with its usual pressure; drift taken out.</summary>
    public Length? EndPlay { get; init; }

    /// <summary>Expanded uncertainty of the end play (k = 2, JCGM 100).</summary>
    public Length? EndPlayU95 { get; init; }

    /// <summary>What the uncertainty is made of; null where there is no end play.</summary>
    public EndPlayBudget? Budget { get; init; }

    /// <summary>Largest minus smallest end play of the single cycles; null with fewer than two.</summary>
    public Length? Spread { get; init; }

    /// <summary>The end play of each cycle by itself, in millimetres, drift taken out, in order.</summary>
    public IReadOnlyList<double> ByCycleMillimetres { get; init; } = [];

    /// <summary>The stretches in which the shaft was held, in order, those left out included.</summary>
    public IReadOnlyList<HeldStop> Holds { get; init; } = [];

    /// <summary>Where each stop stood over the capture, in millimetres, with the drift of the stand; at the middle of each hold, in order. Empty where there is no end play.</summary>
    public IReadOnlyList<(double Low, double High)> StopsAtHolds { get; init; } = [];

    /// <summary>Readings that stand alone and were left out as knocks, by their place from 0.</summary>
    public IReadOnlyList<int> Knocks { get; init; } = [];

    /// <summary>What makes the result less sure than it looks, each once.</summary>
    public IReadOnlyList<EndPlayWarning> Warnings { get; init; } = [];
}
