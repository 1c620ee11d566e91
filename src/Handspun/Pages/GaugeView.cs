namespace Handspun.Pages;

/// <summary>One gauge with its checks and studies.</summary>
public sealed record GaugeView
{
    /// <summary>What the shop calls it.</summary>
    public required string Name { get; init; }

    /// <summary>What it is; null where nobody said.</summary>
    public string? Description { get; init; }

    /// <summary>Where it stands.</summary>
    public required StandingView Standing { get; init; }

    /// <summary>Whether the station listens to it, so that readings can be taken from it.</summary>
    public required bool PluggedIn { get; init; }

    /// <summary>What is known of it.</summary>
    public required IReadOnlyList<Fact> Facts { get; init; }

    /// <summary>What can be typed of it, as it stands.</summary>
    public required IReadOnlyList<TypedField> Sheet { get; init; }

    /// <summary>What is typed of a check.</summary>
    public required IReadOnlyList<TypedField> CheckFields { get; init; }

    /// <summary>How readings are written.</summary>
    public required string ReadingsHint { get; init; }

    /// <summary>The checks, newest first.</summary>
    public required IReadOnlyList<GaugeCheckView> Checks { get; init; }

    /// <summary>How a study is written.</summary>
    public required string StudyHint { get; init; }

    /// <summary>The studies, newest first.</summary>
    public required IReadOnlyList<StudyView> Studies { get; init; }
}

/// <summary>One thing to type.</summary>
/// <param name="Name">The key that is sent.</param>
/// <param name="Label">What it is called.</param>
/// <param name="Value">What stands there now; empty where nothing does.</param>
/// <param name="Hint">How to write it; null where that is plain.</param>
/// <param name="Required">Whether it must be filled in.</param>
public sealed record TypedField(string Name, string Label, string Value, string? Hint = null, bool Required = false);

/// <summary>One check.</summary>
/// <param name="At">The day.</param>
/// <param name="Error">The error with its uncertainty.</param>
/// <param name="Limit">What the error may be.</param>
/// <param name="Found">What followed on that day.</param>
/// <param name="Facts">Against what, by whom, how far the readings spread, and when it is due again.</param>
public sealed record GaugeCheckView(string At, string Error, string Limit, StandingView Found, IReadOnlyList<Fact> Facts);

/// <summary>One study.</summary>
/// <param name="At">The day.</param>
/// <param name="About">Mechanics, parts and trials.</param>
/// <param name="Sentence">What it says.</param>
/// <param name="Anova">The analysis of variance: source, degrees of freedom, sum of squares, mean square.</param>
/// <param name="AnovaNote">What was pooled, and why.</param>
/// <param name="Spreads">Source, standard deviation, share of the whole.</param>
/// <param name="Unit">The unit of the table.</param>
public sealed record StudyView(
    string At, string About, string Sentence, IReadOnlyList<IReadOnlyList<string>> Anova, string AnovaNote, IReadOnlyList<IReadOnlyList<string>> Spreads, string Unit);
