using Handspun.Jobs.Lengths;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Limits;

/// <summary>The bounds of a limit as somebody typed them, each with its unit.</summary>
/// <param name="Lower">The smallest value allowed; null where none was typed.</param>
/// <param name="Upper">The largest value allowed; null where none was typed.</param>
/// <param name="Problem">What is wrong with them and what to do, in one sentence or two; null where nothing is.</param>
public readonly record struct LimitBounds(Length? Lower, Length? Upper, string? Problem)
{
    /// <summary>Whether neither bound was typed.</summary>
    public bool IsEmpty => Lower is null && Upper is null;

    /// <summary>Reads both.</summary>
    /// <param name="lower">The lower bound: what it is called where it was typed, and what was typed; null for nothing.</param>
    /// <param name="upper">The upper bound, likewise.</param>
    public static LimitBounds Read((string Name, string? Text) lower, (string Name, string? Text) upper)
    {
        var (wrong, alsoWrong) = (Unreadable(lower, out var least), Unreadable(upper, out var most));
        if ((wrong ?? alsoWrong) is { } problem)
        {
            return new(null, null, problem);
        }

        return least is { } low && most is { } high && low >= high
            ? new(null, null, $"{lower.Name} does not lie below {upper.Name}: swap them or mend the one that is wrong.")
            : new(least, most, null);
    }

    /// <summary>The limit with these bounds.</summary>
    /// <param name="source">Where it comes from.</param>
    /// <param name="confirmedBy">Who confirmed it; null where nobody did.</param>
    public Limit ToLimit(string source, string? confirmedBy) =>
        new() { LowerMillimetres = Lower?.Millimetres, UpperMillimetres = Upper?.Millimetres, Source = source, ConfirmedBy = confirmedBy };

    private static string? Unreadable((string Name, string? Text) bound, out Length? length)
    {
        length = null;
        if (bound.Text is not null)
        {
            if (!LengthText.TryParse(bound.Text, out var read))
            {
                return $"{bound.Name} '{bound.Text}' is no length. {LengthText.HowToWrite}";
            }

            length = read;
        }

        return null;
    }
}
