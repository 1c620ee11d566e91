using System.Text;
using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Decoding.Text;

/// <summary>The words by which a gauge names its unit, upper and lower case alike.</summary>
/// <param name="millimetre">The words for millimetres.</param>
/// <param name="inch">The words for inches.</param>
public sealed class UnitWords(IReadOnlyList<string> millimetre, IReadOnlyList<string> inch)
{
    private readonly byte[][] _millimetre = [.. millimetre.Select(Encoding.Latin1.GetBytes)];
    private readonly byte[][] _inch = [.. inch.Select(Encoding.Latin1.GetBytes)];

    /// <summary>Those that are used where a profile names no others.</summary>
    public static UnitWords Usual { get; } = new(["mm"], ["in", "inch", "\""]);

    /// <summary>Reads a word.</summary>
    /// <returns>False where it names no unit.</returns>
    public bool TryRead(ReadOnlySpan<byte> word, out GaugeUnit unit)
    {
        unit = GaugeUnit.Millimetre;
        if (Holds(_millimetre, word))
        {
            return true;
        }

        unit = GaugeUnit.Inch;
        return Holds(_inch, word);
    }

    private static bool Holds(byte[][] words, ReadOnlySpan<byte> word)
    {
        foreach (var known in words)
        {
            if (Ascii.EqualsIgnoreCase(known, word))
            {
                return true;
            }
        }

        return false;
    }
}
