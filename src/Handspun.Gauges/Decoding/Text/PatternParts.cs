using System.Text;
using System.Text.RegularExpressions;

namespace Handspun.Gauges.Decoding.Text;

/// <summary>A stretch of a pattern that is matched by itself.</summary>
/// <param name="Group">The name of the group that it is; null where it is none.</param>
/// <param name="Text">The pattern of the stretch.</param>
public readonly record struct PatternPart(string? Group, string Text);

/// <summary>Takes a pattern apart where its named groups begin and end.</summary>
internal static partial class PatternParts
{
    /// <summary>Takes it apart.</summary>
    /// <param name="pattern">A pattern that compiles.</param>
    /// <returns>Null where it cannot be: a named group within another, an alternative beside it, or one that is repeated.</returns>
    public static IReadOnlyList<PatternPart>? Of(string pattern)
    {
        if (OtherGroups().IsMatch(pattern))
        {
            return null;
        }

        var parts = new List<PatternPart>();
        var plain = 0;
        for (var at = 0; at < pattern.Length; at++)
        {
            switch (pattern[at])
            {
                case '|' or '^' or '$':
                case '\\' when at + 1 < pattern.Length && "bBAGZz".Contains(pattern[at + 1], StringComparison.Ordinal):
                    return null;   // an alternative to all of it, or a look at what stands beside a part
                case '(':
                    var end = Close(pattern, at);
                    if (Name(pattern, at) is { } name)
                    {
                        Add(parts, null, pattern[plain..at]);
                        plain = pattern.AsSpan(end).StartsWith("?") ? end + 1 : end;
                        if (pattern.AsSpan(plain) is ['?' or '*' or '+' or '{', ..])
                        {
                            return null;
                        }

                        Add(parts, name, pattern[at..plain]);
                        end = plain;
                    }
                    else if (pattern.AsSpan(at, end - at).Contains("(?<", StringComparison.Ordinal))
                    {
                        return null;
                    }

                    at = end - 1;
                    break;
                default:
                    at = Step(pattern, at) - 1;
                    break;
            }
        }

        Add(parts, null, pattern[plain..]);
        return parts.GroupBy(part => part.Group).Any(same => same.Key is not null && same.Count() > 1) ? null : parts;
    }

    /// <summary>The text that a stretch stands for letter by letter; null where it is more than that.</summary>
    public static string? Literal(string pattern)
    {
        var text = new StringBuilder();
        for (var at = 0; at < pattern.Length; at++)
        {
            if (pattern[at] == '\\' && at + 1 < pattern.Length && !char.IsAsciiLetterOrDigit(pattern[at + 1]))
            {
                at++;
            }
            else if (@"\*+?|{}[]()^$.".Contains(pattern[at], StringComparison.Ordinal))
            {
                return null;
            }

            text.Append(pattern[at]);
        }

        return text.ToString();
    }

    // Options that reach beyond their brackets, comments, names in quotes: rare, and not worth telling apart.
    [GeneratedRegex(@"\(\?[^:<]")]
    private static partial Regex OtherGroups();

    private static void Add(List<PatternPart> parts, string? group, string text)
    {
        if (text.Length > 0)
        {
            parts.Add(new(group, text));
        }
    }

    private static string? Name(string pattern, int open) =>
        pattern.AsSpan(open).StartsWith("(?<") ? pattern[(open + 3)..pattern.IndexOf('>', open)] : null;

    // Behind the bracket that closes the one at a place.
    private static int Close(string pattern, int open)
    {
        var depth = 0;
        var at = open;
        do
        {
            depth += pattern[at] switch { '(' => 1, ')' => -1, _ => 0 };
            at = pattern[at] is '(' or ')' ? at + 1 : Step(pattern, at);
        }
        while (depth > 0 && at < pattern.Length);
        return at;
    }

    // Behind one letter, one escaped letter or one class of letters.
    private static int Step(string pattern, int at)
    {
        if (pattern[at] == '\\')
        {
            return Math.Min(at + 2, pattern.Length);
        }

        if (pattern[at] != '[')
        {
            return at + 1;
        }

        at += pattern.AsSpan(at).StartsWith("[^") ? 2 : 1;
        at += at < pattern.Length && pattern[at] == ']' ? 1 : 0;
        while (at < pattern.Length && pattern[at] != ']')
        {
            at += pattern[at] == '\\' ? 2 : 1;
        }

        return Math.Min(at + 1, pattern.Length);
    }
}
