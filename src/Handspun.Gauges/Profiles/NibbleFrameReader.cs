using System.Globalization;
using Handspun.Gauges.Decoding.Binary;

namespace Handspun.Gauges.Profiles;

/// <summary>Reads from a profile how binary-coded decimal digits lie in a frame.</summary>
internal static class NibbleFrameReader
{
    private const int MostDigits = 15;
    private const int MostNibbles = 2 * FrameCut.MostBytes;

    private static readonly Dictionary<string, NibblePacking> Packings = new()
    {
        ["high-first"] = NibblePacking.HighFirst,
        ["low-first"] = NibblePacking.LowFirst,
        ["hex-digit"] = NibblePacking.HexDigit,
        ["one-each"] = NibblePacking.OneEach,
    };

    /// <summary>Reads it.</summary>
    public static FrameFormat Read(ProfileSection section, ProfileSection flags)
    {
        var digits = section.Wholes("digits", [0], 0, MostNibbles - 1);
        if (!section.Has("digits") || digits.Count > MostDigits)
        {
            section.Complain("digits", string.Create(CultureInfo.InvariantCulture, $"lists the nibbles with the digits, from 0, the one that counts most first; 1 to {MostDigits}"));
        }

        var cut = CutReader.Read(section, "length");
        var layout = new NibbleLayout
        {
            Packing = section.Choice("packing", "high-first", Packings),
            Digits = digits,
            SignAt = section.MaybeWhole("sign_at", 0, MostNibbles - 1),
            Minus = section.Wholes("minus", [8], 0, 15),
            Plus = section.Wholes("plus", [0], 0, 15),
            PointAt = section.MaybeWhole("point_at", 0, MostNibbles - 1),
            Decimals = section.Whole("decimals", 0, 0, Math.Min(digits.Count, MostDigits)),
            UnitAt = section.MaybeWhole("unit_at", 0, MostNibbles - 1),
            Millimetre = section.Wholes("mm", [0], 0, 15),
            Inch = section.Wholes("in", [1], 0, 15),
        };
        Room(section, cut, layout.Shortest);
        return new NibbleFormat
        {
            Layout = layout,
            Order = section.Choice("bits", "low-first", BitFrameReader.Orders),
            Flags = FlagsReader.ReadBits(flags, BitFrameReader.BitsOf(cut)),
            Cut = cut,
        };
    }

    /// <summary>Complains where a frame of fixed length is too short for what is looked for in it.</summary>
    public static void Room(ProfileSection section, FrameCut cut, int shortest)
    {
        if (cut.Kind == CutKind.Length && cut.Length > 0 && cut.Length < shortest)
        {
            section.Complain("length", string.Create(CultureInfo.InvariantCulture, $"is too short: what is looked for in a frame takes {shortest} bytes"));
        }
    }
}
