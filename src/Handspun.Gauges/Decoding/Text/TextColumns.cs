namespace Handspun.Gauges.Decoding.Text;

/// <summary>A stretch of a frame.</summary>
/// <param name="From">Its first byte, counted from 0.</param>
/// <param name="Count">Its bytes; 0 where there is no such stretch.</param>
public readonly record struct Column(int From, int Count)
{
    /// <summary>Behind its last byte.</summary>
    public int End => From + Count;

    /// <summary>Whether there is such a stretch.</summary>
    public bool IsThere => Count > 0;

    /// <summary>Its bytes, without blanks at the ends.</summary>
    public ReadOnlySpan<byte> Of(ReadOnlySpan<byte> frame) => Blanks.Trim(frame.Slice(From, Count));
}

/// <summary>Where in a frame of text each thing stands.</summary>
public sealed record TextColumns
{
    /// <summary>The number, with its sign where that has no column of its own.</summary>
    public required Column Value { get; init; }

    /// <summary>The sign.</summary>
    public Column Sign { get; init; }

    /// <summary>The unit.</summary>
    public Column Unit { get; init; }

    /// <summary>A token.</summary>
    public Column Flag { get; init; }

    /// <summary>The shortest frame in which they all stand.</summary>
    public int Shortest => new[] { Value.End, Sign.End, Unit.End, Flag.End }.Max();
}

/// <summary>Text in columns.</summary>
/// <param name="grammar">Numbers, units and tokens.</param>
/// <param name="columns">The columns.</param>
public sealed class TextColumnsDecoding(TextGrammar grammar, TextColumns columns) : IFrameDecoding
{
    private readonly int _shortest = columns.Shortest;

    /// <inheritdoc/>
    public FrameResult Decode(ReadOnlySpan<byte> frame)
    {
        if (grammar.IsToken(frame, out var told))
        {
            return told;
        }

        if (frame.Length < _shortest)
        {
            return FrameResult.Rejected(FrameFault.TooShort, frame.Length);
        }

        var words = default(TextWords);
        if (columns.Flag.IsThere && grammar.Tokens.Find(columns.Flag.Of(frame)) is { } token)
        {
            words.Add(token);
        }

        if (columns.Unit.IsThere)
        {
            if (!grammar.Units.TryRead(columns.Unit.Of(frame), out var unit))
            {
                return FrameResult.Rejected(FrameFault.UnknownUnit, columns.Unit.From);
            }

            words.Unit = unit;
        }

        var digits = columns.Value.Of(frame);
        if (!grammar.Number.TryRead(digits, out var value, out var used) || used != digits.Length)
        {
            return words.Flags.HasFlag(Readings.GaugeFlags.Overrange) ? words.WithoutValue() : FrameResult.Rejected(FrameFault.NotANumber, columns.Value.From);
        }

        return SignOf(frame) switch
        {
            -1 => words.Of(-value),
            1 => words.Of(value),
            _ => FrameResult.Rejected(FrameFault.NotANumber, columns.Sign.From),
        };
    }

    private int SignOf(ReadOnlySpan<byte> frame) => !columns.Sign.IsThere ? 1 : columns.Sign.Of(frame) switch
    {
        [(byte)'-'] => -1,
        [] or [(byte)'+'] => 1,
        _ => 0,
    };
}
