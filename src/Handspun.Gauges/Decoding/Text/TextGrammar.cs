namespace Handspun.Gauges.Decoding.Text;

/// <summary>What all frames of text have in common, however they are laid out.</summary>
public sealed record TextGrammar
{
    /// <summary>How numbers are written.</summary>
    public NumberForm Number { get; init; }

    /// <summary>The words for units.</summary>
    public UnitWords Units { get; init; } = UnitWords.Usual;

    /// <summary>The words for what the gauge says of itself. One of them may also stand alone, where the value would be.</summary>
    public TextTokens Tokens { get; init; } = TextTokens.None;

    /// <summary>Whether a text is one token and nothing else.</summary>
    internal bool IsToken(ReadOnlySpan<byte> text, out FrameResult frame)
    {
        var words = default(TextWords);
        var token = Tokens.Find(Blanks.Trim(text));
        if (token is not null)
        {
            words.Add(token);
        }

        frame = words.WithoutValue();
        return token is not null;
    }
}
