using System.Text.RegularExpressions;

namespace Handspun.Gauges.Decoding.Text;

/// <summary>Where the groups of a pattern lie in a text.</summary>
internal ref struct PatternFind
{
    public ReadOnlySpan<char> Value { get; set; }

    public ReadOnlySpan<char> Sign { get; set; }

    public ReadOnlySpan<char> Unit { get; set; }

    public ReadOnlySpan<char> Flag { get; set; }

    public void Set(string? group, ReadOnlySpan<char> text)
    {
        switch (group)
        {
            case "value":
                Value = text;
                break;
            case "sign":
                Sign = text;
                break;
            case "unit":
                Unit = text;
                break;
            case "flag":
                Flag = text;
                break;
        }
    }
}

/// <summary>A regular expression over a whole frame, with the named groups <c>value</c>, <c>sign</c>, <c>unit</c> and <c>flag</c>.</summary>
/// <remarks>
/// Matched in time that grows with the text and no faster. The engine that can do that hands its groups out only as objects, so the
/// pattern is taken apart at its groups and each part is matched where the one before it ended. Where every part finds its first choice
/// that is what the whole pattern would find; where one does not, the whole pattern is asked.
/// </remarks>
public sealed class TextPattern
{
    /// <summary>The groups that a pattern may have.</summary>
    public static readonly IReadOnlyList<string> Groups = ["value", "sign", "unit", "flag"];

    private const RegexOptions Linear = RegexOptions.NonBacktracking | RegexOptions.CultureInvariant;

    private readonly Regex _whole;
    private readonly (string? Group, string? Literal, Regex? Pattern)[]? _parts;

    /// <summary>Makes it.</summary>
    /// <exception cref="RegexParseException">It is no regular expression.</exception>
    /// <exception cref="NotSupportedException">It may take exponential time or room, or looks round itself.</exception>
    public TextPattern(string pattern)
    {
        _whole = new Regex($@"\A(?:{pattern})\z", Linear);
        _ = _whole.IsMatch(new string('0', 64));
        Names = [.. _whole.GetGroupNames().Where(name => !char.IsAsciiDigit(name[0]))];
        try
        {
            _parts = PatternParts.Of(Bare(pattern))?.Select(Part).ToArray();
        }
        catch (RegexParseException)
        {
            _parts = null;   // a part does not stand by itself; the whole pattern does
        }
    }

    /// <summary>The groups that it has.</summary>
    public IReadOnlyList<string> Names { get; }

    /// <summary>Whether it is matched part by part, which allocates nothing.</summary>
    public bool IsTakenApart => _parts is not null;

    /// <summary>Matches a text from end to end.</summary>
    internal bool TryMatch(ReadOnlySpan<char> text, out PatternFind find)
    {
        find = default;
        if (TryParts(text, ref find))
        {
            return true;
        }

        find = default;
        return _whole.IsMatch(text) && TryWhole(text, ref find);
    }

    private bool TryParts(ReadOnlySpan<char> text, ref PatternFind find)
    {
        if (_parts is null)
        {
            return false;
        }

        foreach (var (group, literal, pattern) in _parts)
        {
            var length = literal is null ? First(pattern!, text) : text.StartsWith(literal, StringComparison.Ordinal) ? literal.Length : -1;
            if (length < 0)
            {
                return false;
            }

            find.Set(group, text[..length]);
            text = text[length..];
        }

        return text.IsEmpty;
    }

    private static int First(Regex pattern, ReadOnlySpan<char> text)
    {
        var matches = pattern.EnumerateMatches(text);
        return matches.MoveNext() ? matches.Current.Length : -1;
    }

    private bool TryWhole(ReadOnlySpan<char> text, ref PatternFind find)
    {
        var match = _whole.Match(text.ToString());
        foreach (var name in Names)
        {
            find.Set(name, match.Groups[name].ValueSpan);
        }

        return match.Success;
    }

    private static (string? Group, string? Literal, Regex? Pattern) Part(PatternPart part) =>
        part.Group is null && PatternParts.Literal(part.Text) is { } literal
            ? (null, literal, null)
            : (part.Group, null, new Regex($@"\A(?:{part.Text})", Linear));

    // A frame is matched from end to end, so anchors at the ends of the pattern say nothing more.
    private static string Bare(string pattern)
    {
        pattern = pattern.StartsWith('^') ? pattern[1..] : pattern;
        return pattern.EndsWith('$') && !pattern.EndsWith(@"\$", StringComparison.Ordinal) ? pattern[..^1] : pattern;
    }
}
