using Handspun.Jobs.Lengths;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Entries;

/// <summary>One field of an entry.</summary>
/// <param name="Name">Its name in data and forms.</param>
/// <param name="Of">What was typed in it.</param>
internal sealed record EntryField(string Name, Func<TypedEntry, string?> Of);

/// <summary>Reads the fields of an entry, and notes what is wrong with each.</summary>
internal sealed class EntryFields(TypedEntry entry, Dictionary<string, string> problems)
{
    private const string HowToWrite = "Give the number with its unit, such as '0.005 in' or '0.127 mm', or choose the unit.";

    private readonly LengthUnit? _unit = entry.Unit?.Trim().ToLowerInvariant() switch
    {
        "in" or "inch" => LengthUnit.Inch,
        "mm" => LengthUnit.Millimetre,
        _ => null,
    };

    /// <summary>A length that must be there.</summary>
    public Length? Length(string name, string? text, bool below = false)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            problems[name] = "This is missing. " + HowToWrite;
            return null;
        }

        if (!LengthText.TryParse(text, _unit, out var length))
        {
            problems[name] = $"'{text.Trim()}' is no length. {HowToWrite}";
            return null;
        }

        if (length < Metrology.Quantities.Length.Zero && !below)
        {
            problems[name] = $"'{text.Trim()}' is below zero: type it without the sign.";
            return null;
        }

        return length;
    }

    /// <summary>A length that may be left out.</summary>
    public Length? Optional(string name, string? text) => string.IsNullOrWhiteSpace(text) ? null : Length(name, text);

    /// <summary>Words that must be there.</summary>
    public string? Text(string name, string? text, string missing, int longest)
    {
        var trimmed = text?.Trim() ?? "";
        if (trimmed.Length == 0)
        {
            problems[name] = missing;
        }
        else if (trimmed.Length > longest)
        {
            problems[name] = $"Make it shorter: {longest} characters at most.";
        }

        return trimmed;
    }

    /// <summary>What was typed, for the record.</summary>
    public string Typed(IReadOnlyList<EntryField> fields) => string.Join(", ", fields.Select(field => Worded(field.Name, WithUnit(field.Of(entry)!.Trim()))));

    private static string Worded(string name, string text) => name switch
    {
        "goes" => $"{text} goes",
        "does_not_go" => $"{text} does not",
        "highest" => $"highest {text}",
        "lowest" => $"lowest {text}",
        _ => text,
    };

    private string WithUnit(string text) => _unit is { } unit && !text.Any(letter => char.IsLetter(letter) || letter == '"') ? $"{text} {LengthText.Symbol(unit)}" : text;
}
