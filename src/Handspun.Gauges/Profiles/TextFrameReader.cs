using System.Globalization;
using System.Text.RegularExpressions;
using Handspun.Gauges.Decoding.Text;

namespace Handspun.Gauges.Profiles;

/// <summary>Reads from a profile how frames of text are laid out.</summary>
internal static class TextFrameReader
{
    private const int LongestPattern = 400;

    /// <summary>Free text.</summary>
    public static FrameFormat ReadLine(ProfileSection section, ProfileSection flags) => new TextLineFormat
    {
        Before = section.Bytes("before"),
        Grammar = Grammar(section, flags),
        Cut = CutReader.Read(section, "line"),
    };

    /// <summary>Columns.</summary>
    public static FrameFormat ReadColumns(ProfileSection section, ProfileSection flags)
    {
        if (!section.Has("value_at"))
        {
            section.Complain("value_at", "says where the number stands: the first byte, from 0, and how many, such as [3, 8]");
        }

        return new TextColumnsFormat
        {
            Columns = new()
            {
                Value = Column(section, "value_at"),
                Sign = Column(section, "sign_at"),
                Unit = Column(section, "unit_at"),
                Flag = Column(section, "flag_at"),
            },
            Grammar = Grammar(section, flags),
            Cut = CutReader.Read(section, "line"),
        };
    }

    /// <summary>A pattern.</summary>
    public static FrameFormat ReadPattern(ProfileSection section, ProfileSection flags) => new TextPatternFormat
    {
        Pattern = Pattern(section) ?? new("(?<value>.+)"),
        Grammar = Grammar(section, flags),
        Cut = CutReader.Read(section, "line"),
    };

    private static TextGrammar Grammar(ProfileSection section, ProfileSection flags) => new()
    {
        Number = new(section.Switch("exponent") ?? false, section.Switch("comma") ?? false),
        Units = new(section.Texts("mm", "mm"), section.Texts("in", "in", "inch", "\"")),
        Tokens = FlagsReader.ReadTokens(flags),
    };

    private static Column Column(ProfileSection section, string key)
    {
        var numbers = section.Wholes(key, [0, 0], 0, FrameCut.MostBytes);
        if (numbers is [var from, var count] && from + count <= FrameCut.MostBytes && (count > 0 || !section.Has(key)))
        {
            return new(from, count);
        }

        section.Complain(key, string.Create(CultureInfo.InvariantCulture, $"is the first byte, from 0, and how many, within {FrameCut.MostBytes} bytes, such as [3, 8]"));
        return default;
    }

    private static TextPattern? Pattern(ProfileSection section)
    {
        var text = section.Text("pattern", " ");
        if (!section.Has("pattern"))
        {
            section.Complain("pattern", "is the regular expression of a whole frame, with a group such as (?<value>[+-][0-9.]+)");
            return null;
        }

        if (text.Length > LongestPattern)
        {
            section.Complain("pattern", string.Create(CultureInfo.InvariantCulture, $"is longer than {LongestPattern} letters: make it simpler"));
            return null;
        }

        try
        {
            var pattern = new TextPattern(text);
            if (pattern.Names.FirstOrDefault(name => !TextPattern.Groups.Contains(name)) is { } unknown)
            {
                section.Complain("pattern", $"has a group '{unknown}'; known are {string.Join(", ", TextPattern.Groups)}");
            }
            else if (!pattern.Names.Contains("value"))
            {
                section.Complain("pattern", "has no group 'value', such as (?<value>[+-][0-9.]+)");
            }

            return pattern;
        }
        catch (RegexParseException e)
        {
            section.Complain("pattern", $"is no regular expression ({e.Message.TrimEnd('.')})");
        }
        catch (NotSupportedException e)
        {
            section.Complain("pattern", $"could take exponential time or room ({e.Message.TrimEnd('.')}): use no look-around, no back-reference and no large counts within counts");
        }

        return null;
    }
}
