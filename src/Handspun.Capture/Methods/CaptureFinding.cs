using Handspun.Jobs.Records;
using Handspun.Metrology.Quantities;

namespace Handspun.Capture.Methods;

/// <summary>What the readings of a capture say, so far or at its end. Each kind has its own.</summary>
public abstract record CaptureFinding
{
    /// <summary>Whether there is a result.</summary>
    public abstract bool IsMeasured { get; }

    /// <summary>What is missing and what to do, in one sentence; null where there is a result.</summary>
    public abstract string? Missing { get; }

    /// <summary>Turns, cycles or passes that were seen.</summary>
    public abstract double Count { get; }

    /// <summary>Whether so little was seen that a capture which ends by standing still was only a touch, and is not recorded.</summary>
    public abstract bool IsOnlyTouch { get; }

    /// <summary>The figures, as a record keeps them.</summary>
    public abstract ResultFigures Figures { get; }

    /// <summary>The value that is held against the limit and its expanded uncertainty, at little cost: it is asked for several times a second.</summary>
    public virtual (Length? Value, Length? U95) Headline => (Figures.Value, Figures.ValueU95);

    /// <summary>What makes the result less sure than it looks.</summary>
    public abstract IEnumerable<RecordWarning> Warnings { get; }

    /// <summary>What makes the result so far less sure than it looks, while the capture goes on; what only time can bring is not among it.</summary>
    public virtual IEnumerable<RecordWarning> LiveWarnings(CaptureSoFar soFar) => [];

    /// <summary>What only this kind tells of a capture that goes on.</summary>
    public abstract LiveFigures Live(CaptureSoFar soFar);

    /// <summary>What the hand is told to do next, in one sentence or two.</summary>
    public abstract string Advice(CaptureSoFar soFar);

    /// <summary>Whether there is a result that rests on as much as was wanted.</summary>
    public virtual bool IsEnough(double wanted) => IsMeasured && Count >= wanted;
}

/// <summary>How a capture goes on.</summary>
/// <param name="Wanted">Turns, cycles or passes that are enough.</param>
/// <param name="ReadingsPerSecond">Readings a second; 0 where it is not known yet.</param>
/// <param name="Marks">How many times the mark was noted.</param>
public readonly record struct CaptureSoFar(double Wanted, double ReadingsPerSecond = 0, int Marks = 0);

/// <summary>What only one kind of measurement tells while it goes on; each kind has its own. Sent as flat JSON keys.</summary>
public abstract record LiveFigures;
