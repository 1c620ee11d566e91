using System.Text.Json.Serialization;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Points;
using Handspun.Metrology.Fits;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Records;

/// <summary>What a capture found, as it is kept. Each kind of point has figures of its own.</summary>
/// <remarks>
/// Kept and sent as JSON (<see cref="FiguresJson"/>), so a kind adds a type of its own and a line here, and no column. What can be
/// set is kept; what is worked out from it is not.
/// </remarks>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(RunoutFigures), "runout")]
[JsonDerivedType(typeof(EndPlayFigures), "end-play")]
[JsonDerivedType(typeof(BoreFigures), "bore")]
[JsonDerivedType(typeof(HandFigures), "by-hand")]
[JsonDerivedType(typeof(SizeFigures), "outside-size")]
[JsonDerivedType(typeof(ClearanceFigures), "clearance")]
[JsonDerivedType(typeof(LiftFigures), "lift-curve")]
[JsonDerivedType(typeof(TimingFigures), "cam-timing")]
public abstract record ResultFigures
{
    /// <summary>Readings in the capture.</summary>
    public int Readings { get; init; }

    /// <summary>Readings that were left out as knocks.</summary>
    public int Rejected { get; init; }

    /// <summary>The kind of point that they belong to.</summary>
    [JsonIgnore]
    public abstract PointKind Kind { get; }

    /// <summary>The value that is held against the limit; null where there is no result.</summary>
    public abstract Length? Value { get; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public abstract Length? ValueU95 { get; }

    /// <summary>The size of what was measured, where it is known whole and not only as a difference; null where it is not.</summary>
    public virtual MeasuredSize? AbsoluteSize => null;

    /// <summary>What the value is called, such as <c>Total indicated runout</c>.</summary>
    public abstract string ValueTitle { get; }

    /// <summary>Why the value is not held against a limit, and what to do, in one sentence; null where it is.</summary>
    public virtual string? NotJudged => null;

    /// <summary>What to do where the limit lies inside the uncertainty, in one sentence.</summary>
    public abstract string SurerBy { get; }

    /// <summary>The result as it stands on a screen, with its unit; null where there is none.</summary>
    public virtual ShownResult? InFigures(LengthUnit unit) =>
        this is { Value: { } value, ValueU95: { } u95 } ? new(LengthText.Of(value, unit), LengthText.Uncertainty(u95, unit)) : null;

    /// <summary>The whole result in a sentence or two where it is no single length; null leaves it to the value and the limit.</summary>
    public virtual string? InWords(LengthUnit unit) => null;

    /// <summary>What the value rests on and what else was found, for a person, in the order to be shown.</summary>
    public abstract IEnumerable<Figure> ToShow(LengthUnit unit);
}

/// <summary>One figure in words.</summary>
/// <param name="Label">Such as <c>Turns</c>.</param>
/// <param name="Text">Such as <c>3.2</c>, with its unit where it has one.</param>
public sealed record Figure(string Label, string Text);

/// <summary>A result on a screen.</summary>
/// <param name="Value">Such as <c>0.0031 in</c> or <c>104.0°</c>.</param>
/// <param name="U95">Its expanded uncertainty (k = 2), without a sign.</param>
public sealed record ShownResult(string Value, string U95);
