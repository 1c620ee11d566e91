using Handspun.Pages.Plans;

namespace Handspun.Pages.Shop;

/// <summary>The page with the shop's settings.</summary>
public sealed record SettingsView
{
    /// <summary>How lengths can be shown, the code being the symbol and the decimals.</summary>
    public required IReadOnlyList<LengthChoice> Lengths { get; init; }

    /// <summary>What stands in the fields: what was typed, else what holds.</summary>
    public required FormState Form { get; init; }

    /// <summary>What is wrong, one sentence a field.</summary>
    public required IReadOnlyDictionary<string, string> Errors { get; init; }

    /// <summary>The longest time before the bay goes on, in seconds.</summary>
    public required long LongestStep { get; init; }

    /// <summary>The tag of the settings that the page shows.</summary>
    public required string Seen { get; init; }

    /// <summary>What holds now, where somebody else saved meanwhile; null where nobody did.</summary>
    public IReadOnlyList<Fact>? Meanwhile { get; init; }

    /// <summary>The unit that this run of the station was told, whatever is chosen here; null where it was told none.</summary>
    public string? UnitOfThisRun { get; init; }

    /// <summary>Whether they have just been saved.</summary>
    public bool IsSaved { get; init; }

    /// <summary>The file that they are kept in.</summary>
    public required string File { get; init; }
}

/// <summary>A way to show lengths.</summary>
/// <param name="Code">Such as <c>in-4</c>.</param>
/// <param name="Title">Such as <c>Inches, ten-thousandths</c>.</param>
/// <param name="Example">The same length in each, such as <c>0.0031 in</c>.</param>
public sealed record LengthChoice(string Code, string Title, string Example);
