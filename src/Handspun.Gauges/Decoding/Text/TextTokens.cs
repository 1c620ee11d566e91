using System.Text;
using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Decoding.Text;

/// <summary>A word by which a gauge says something of itself.</summary>
/// <param name="Text">The word, as it is sent.</param>
/// <param name="Flag">What it means; none where it only tells the index.</param>
/// <param name="IsIndex">Whether it says that the index passes.</param>
public sealed record TextToken(string Text, GaugeFlags Flag, bool IsIndex);

/// <summary>All such words of a gauge.</summary>
public sealed class TextTokens(IReadOnlyList<TextToken> tokens)
{
    private readonly (byte[] Word, TextToken Token)[] _words = [.. tokens.Select(token => (Encoding.Latin1.GetBytes(token.Text), token))];

    /// <summary>None.</summary>
    public static TextTokens None { get; } = new([]);

    /// <summary>Whether one of them tells the index.</summary>
    public bool TellIndex => _words.Any(word => word.Token.IsIndex);

    /// <summary>Looks for a word.</summary>
    /// <returns>Null where it is none of them.</returns>
    public TextToken? Find(ReadOnlySpan<byte> word)
    {
        foreach (var (known, token) in _words)
        {
            if (word.SequenceEqual(known))
            {
                return token;
            }
        }

        return null;
    }
}
