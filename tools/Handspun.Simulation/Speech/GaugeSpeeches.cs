using System.Collections.Frozen;

namespace Handspun.Simulation.Speech;

/// <summary>What gauges of every kind send, written down here without the decoders' code.</summary>
public static class GaugeSpeeches
{
    /// <summary>The frame for what a gauge shows, by the name of the profile that reads it.</summary>
    public static FrozenDictionary<string, Func<Shown, byte[]>> ByProfile { get; } = new Dictionary<string, Func<Shown, byte[]>>
    {
        ["text-line"] = TextSpeech.Line,
        ["text-line-inch"] = TextSpeech.Line,
        ["text-exponent"] = TextSpeech.Exponent,
        ["text-columns"] = TextSpeech.Columns,
        ["text-labelled"] = TextSpeech.Labelled,
        ["nibbles-hex"] = TextSpeech.HexNibbles,
        ["nibbles-packed"] = BinarySpeech.PackedNibbles,
        ["bits-three-bytes"] = BinarySpeech.ThreeBytes,
        ["bits-counted"] = BinarySpeech.Counted,
        ["registers-whole"] = RegisterSpeech.Whole,
        ["registers-float"] = RegisterSpeech.FloatingPoint,
    }.ToFrozenDictionary(StringComparer.Ordinal);
}
