using Handspun.Gauges.Decoding.Binary;
using Handspun.Gauges.Decoding.Text;
using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Profiles;

/// <summary>Reads the section <c>[flags]</c> of a profile: words in frames of text, bits in others.</summary>
internal static class FlagsReader
{
    /// <summary>The keys; the index is no flag.</summary>
    public static readonly IReadOnlyList<(string Key, GaugeFlags Flag)> Keys =
    [
        ("battery_low", GaugeFlags.BatteryLow),
        ("hold", GaugeFlags.Hold),
        ("alarm", GaugeFlags.Alarm),
        ("overrange", GaugeFlags.Overrange),
        ("reversed", GaugeFlags.Reversed),
        ("index", GaugeFlags.None),
    ];

    /// <summary>Reads words.</summary>
    public static TextTokens ReadTokens(ProfileSection section)
    {
        var tokens = Keys.SelectMany(key => section.Texts(key.Key).Select(text => new TextToken(text, key.Flag, key.Flag == GaugeFlags.None))).ToList();
        section.RefuseTheRest();
        return new(tokens);
    }

    /// <summary>Reads bits, counted from 0.</summary>
    /// <param name="section">The section.</param>
    /// <param name="bits">How many there are in a frame.</param>
    public static IReadOnlyList<FlagBit> ReadBits(ProfileSection section, int bits)
    {
        var flags = Keys
            .Select(key => (key.Flag, Bit: section.MaybeWhole(key.Key, 0, bits - 1)))
            .Where(key => key.Bit is not null)
            .Select(key => new FlagBit(key.Bit!.Value, key.Flag, key.Flag == GaugeFlags.None))
            .ToList();
        section.RefuseTheRest();
        return flags;
    }
}
