using Handspun.Gauges.Framing;

namespace Handspun.Gauges.Profiles;

/// <summary>Reads from the section <c>[frame]</c> of a profile where frames begin and end.</summary>
internal static class CutReader
{
    private const double ShortestGap = 0.5;
    private const double LongestGap = 10_000;

    private static readonly Dictionary<string, CutKind> Kinds = new()
    {
        ["line"] = CutKind.Line,
        ["terminator"] = CutKind.Terminator,
        ["length"] = CutKind.Length,
        ["prefixed"] = CutKind.Prefixed,
        ["silence"] = CutKind.Silence,
    };

    private static readonly Dictionary<string, CheckKind> Checks = new()
    {
        ["none"] = CheckKind.None,
        ["sum"] = CheckKind.Sum,
        ["xor"] = CheckKind.Xor,
        ["crc16"] = CheckKind.Crc16,
    };

    /// <summary>Reads it.</summary>
    /// <param name="section">The section.</param>
    /// <param name="otherwise">How frames are cut where the profile does not say.</param>
    public static FrameCut Read(ProfileSection section, string otherwise)
    {
        var kind = section.Choice("cut", otherwise, Kinds);
        var gap = section.Number("gap_ms", 0, ShortestGap, LongestGap);
        var end = section.Bytes("end");
        var cut = new FrameCut
        {
            Kind = kind,
            Longest = section.Whole("longest", 64, 8, FrameCut.MostBytes),
            Length = section.Whole("length", 0, 1, FrameCut.MostBytes),
            Start = section.Bytes("start"),
            End = end,
            CountAt = section.Whole("count_at", 0, 0, FrameCut.MostBytes - 1),
            CountAdds = section.Whole("count_adds", 0, 0, FrameCut.MostBytes - 1),
            Gap = gap > 0 ? TimeSpan.FromMilliseconds(gap) : null,
            Check = new(section.Choice("check", "none", Checks), section.Whole("check_from", 0, 0, FrameCut.MostBytes - 1), kind == CutKind.Length ? end.Length : 0),
        };
        Judge(section, cut);
        return cut;
    }

    private static void Judge(ProfileSection section, FrameCut cut)
    {
        Refuse(section, cut.Kind == CutKind.Length, cut.Length == 0, "length", "says how many bytes a frame has: with cut = \"length\" it is needed, and nowhere else");
        Refuse(section, cut.Kind == CutKind.Prefixed, !section.Has("count_at"), "count_at", "says where the byte with the count stands, from 0: with cut = \"prefixed\" it is needed, and nowhere else");
        Refuse(section, cut.Kind is CutKind.Terminator, cut.End.IsEmpty, "end", "says what ends a frame: with cut = \"terminator\" it is needed, with \"length\" it may stand, and nowhere else", cut.Kind == CutKind.Length);
        Refuse(section, cut.Kind is CutKind.Silence, cut.Gap is null, "gap_ms", "says how long a silence ends a frame: with cut = \"silence\" it is needed, and with \"line\" it has no meaning", cut.Kind != CutKind.Line);
        Refuse(section, false, false, "start", "has a meaning only with cut = \"length\" or \"prefixed\"", cut.Kind is CutKind.Length or CutKind.Prefixed);
        Refuse(section, false, false, "count_adds", "has a meaning only with cut = \"prefixed\"", cut.Kind == CutKind.Prefixed);
        if (cut.Kind == CutKind.Length && cut.Length > 0 && cut.Start.Length + cut.End.Length + cut.Check.Length >= cut.Length)
        {
            section.Complain("length", "leaves no room between start, end and check: count them all in");
        }

        if (cut is { Kind: CutKind.Length, Gap: null, End.IsEmpty: true, Check.Kind: CheckKind.None })
        {
            section.Complain("length", "alone does not show where a frame begins: name 'end', 'check' or 'gap_ms' too");
        }

        if (cut is { Kind: CutKind.Prefixed, Gap: null, Check.Kind: CheckKind.None })
        {
            section.Complain("count_at", "alone does not show where a frame begins: name 'check' or 'gap_ms' too");
        }
    }

    private static void Refuse(ProfileSection section, bool needed, bool missing, string key, string rule, bool allowed = false)
    {
        if (needed ? missing : section.Has(key) && !allowed)
        {
            section.Complain(key, rule);
        }
    }
}
