using System.Text.RegularExpressions;

namespace Handspun.Gauges.Readings;

/// <summary>What the shop calls a gauge: lower-case letters, digits and hyphens, such as <c>pinion</c>; 1 to 32 characters, a letter first.</summary>
/// <remarks>It stands in topics and folder names, so nothing else is allowed.</remarks>
public readonly partial record struct GaugeName
{
    private readonly string? _text;

    private GaugeName(string text) => _text = text;

    /// <summary>Reads a name.</summary>
    /// <returns>False where the text is not a name.</returns>
    public static bool TryParse(string? text, out GaugeName name)
    {
        var valid = text is not null && Shape().IsMatch(text);
        name = valid ? new(text!) : default;
        return valid;
    }

    /// <summary>Reads a name that is known to be one.</summary>
    /// <exception cref="FormatException">The text is not a name.</exception>
    public static GaugeName Parse(string text) => TryParse(text, out var name)
        ? name
        : throw new FormatException($"'{text}' is no name for a gauge: use up to 32 lower-case letters, digits and hyphens, a letter first.");

    /// <inheritdoc/>
    public override string ToString() => _text ?? "";

    // \z, for $ would let a line feed stand at the end.
    [GeneratedRegex(@"^[a-z][a-z0-9-]{0,31}\z", RegexOptions.CultureInvariant)]
    private static partial Regex Shape();
}
