using Handspun.Jobs.Lengths;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Records;

/// <summary>A length that was read off a tool by eye and typed, as it is kept.</summary>
public abstract record TypedFigures : ResultFigures
{
    /// <summary>How it was read, as a code: <c>once</c>, <c>leaves</c> or <c>needle</c>.</summary>
    public required string Way { get; init; }

    /// <summary>What was typed, with its unit.</summary>
    public required string Typed { get; init; }

    /// <summary>Who read it.</summary>
    public required string ReadBy { get; init; }

    /// <summary>The tool's division, or the step from one leaf to the next.</summary>
    public double DivisionMillimetres { get; init; }

    /// <summary>The tool's largest error, ± this much; null where it is not known.</summary>
    public double? ErrorLimitMillimetres { get; init; }

    /// <inheritdoc/>
    public override string SurerBy => "Measure again with a tool of finer division.";

    /// <inheritdoc/>
    public override IEnumerable<Figure> ToShow(LengthUnit unit)
    {
        yield return new("Typed", Typed);
        yield return new("Division", LengthText.AsTyped(Length.FromMillimetres(DivisionMillimetres), unit));
        if (ErrorLimitMillimetres is { } error)
        {
            yield return new("Tool's largest error", $"± {LengthText.AsTyped(Length.FromMillimetres(error), unit)}");
        }

        yield return new("Read by", ReadBy);
    }
}
