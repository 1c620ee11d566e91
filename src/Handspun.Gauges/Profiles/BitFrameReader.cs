using System.Globalization;
using Handspun.Gauges.Decoding.Binary;

namespace Handspun.Gauges.Profiles;

/// <summary>Reads from a profile where in a frame the bits of a value lie.</summary>
internal static class BitFrameReader
{
    private const int ByteBits = 8;
    private const int MostBits = ByteBits * FrameCut.MostBytes;
    private const int WidestField = 32;

    private static readonly Dictionary<string, SignRule> Signs = new()
    {
        ["none"] = SignRule.None,
        ["twos-complement"] = SignRule.TwosComplement,
        ["bit"] = SignRule.Bit,
    };

    /// <summary>How bits may be counted, by the names in profiles.</summary>
    public static IReadOnlyDictionary<string, BitOrder> Orders { get; } = new Dictionary<string, BitOrder>
    {
        ["low-first"] = BitOrder.LowFirst,
        ["high-first"] = BitOrder.HighFirst,
    };

    /// <summary>Reads it.</summary>
    public static FrameFormat Read(ProfileSection section, ProfileSection flags)
    {
        if (!section.Has("offset") || !section.Has("width"))
        {
            section.Complain(section.Has("offset") ? "width" : "offset", string.Create(CultureInfo.InvariantCulture, $"is needed: 'offset' is the first bit of the value, from 0, and 'width' its bits, 1 to {WidestField}"));
        }

        var sign = section.Choice("sign", "none", Signs);
        if ((sign == SignRule.Bit) != section.Has("sign_at"))
        {
            section.Complain("sign_at", "says which bit is the sign: with sign = \"bit\" it is needed, and nowhere else");
        }

        var cut = CutReader.Read(section, "length");
        var field = new BitField
        {
            Order = section.Choice("bits", "low-first", Orders),
            From = section.Whole("offset", 0, 0, MostBits - 1),
            Width = section.Whole("width", 1, 1, WidestField),
            Sign = sign,
            SignAt = section.Whole("sign_at", 0, 0, MostBits - 1),
            Unit = Unit(section, MostBits),
        };
        NibbleFrameReader.Room(section, cut, field.Shortest);
        return new BitFieldFormat { Field = field, Flags = FlagsReader.ReadBits(flags, BitsOf(cut)), Cut = cut };
    }

    /// <summary>Reads the bit that tells the unit; null where none does.</summary>
    public static UnitBit? Unit(ProfileSection section, int bits)
    {
        var when = section.Choice("unit_when_set", "in", ValueReader.Units);
        return section.MaybeWhole("unit_at", 0, bits - 1) is { } bit ? new(bit, when) : null;
    }

    /// <summary>The bits of a frame, or of the longest.</summary>
    public static int BitsOf(FrameCut cut) => ByteBits * (cut is { Kind: CutKind.Length, Length: > 0 } ? cut.Length : cut.Longest);
}
