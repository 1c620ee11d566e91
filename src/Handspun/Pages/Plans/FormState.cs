namespace Handspun.Pages.Plans;

/// <summary>What was typed in the forms of a page, and what is wrong with it. Empty on a page that nobody has sent.</summary>
/// <param name="Typed">What was typed, by field, exactly as typed.</param>
/// <param name="Field">The field that needs another look; null where no single one does.</param>
/// <param name="Sentence">What is wrong and what to do; null where nothing is.</param>
public sealed record FormState(IReadOnlyDictionary<string, IReadOnlyList<string>> Typed, string? Field = null, string? Sentence = null)
{
    /// <summary>A page that nobody has sent.</summary>
    public static FormState Empty { get; } = new(new Dictionary<string, IReadOnlyList<string>>());

    /// <summary>What was typed in a field; empty where nothing was.</summary>
    public string Of(string field) => Typed.TryGetValue(field, out var values) && values.Count > 0 ? values[0] : "";

    /// <summary>Whether a choice was taken in a field.</summary>
    public bool Has(string field, string value) => Typed.TryGetValue(field, out var values) && values.Contains(value);

    /// <summary>What is wrong with a field; null where nothing is.</summary>
    public string? Error(string field) => Field == field ? Sentence : null;
}
