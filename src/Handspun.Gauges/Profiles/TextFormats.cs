using Handspun.Gauges.Decoding;
using Handspun.Gauges.Decoding.Text;

namespace Handspun.Gauges.Profiles;

/// <summary>Frames of text.</summary>
public abstract record TextFormat() : CutFrameFormat(new FrameCut())
{
    /// <summary>Numbers, units and tokens.</summary>
    public TextGrammar Grammar { get; init; } = new();

    /// <inheritdoc/>
    public override bool TellsIndex => Grammar.Tokens.TellIndex;
}

/// <summary>Text with one number each, and a unit and tokens behind it.</summary>
public sealed record TextLineFormat : TextFormat
{
    /// <summary>What stands before the number; may be empty.</summary>
    public ReadOnlyMemory<byte> Before { get; init; }

    /// <inheritdoc/>
    protected override IFrameDecoding CreateDecoding() => new TextLineDecoding(Grammar, Before);
}

/// <summary>Text in columns.</summary>
public sealed record TextColumnsFormat : TextFormat
{
    /// <summary>The columns.</summary>
    public required TextColumns Columns { get; init; }

    /// <inheritdoc/>
    protected override IFrameDecoding CreateDecoding() => new TextColumnsDecoding(Grammar, Columns);
}

/// <summary>Text of the shape of a pattern.</summary>
public sealed record TextPatternFormat : TextFormat
{
    /// <summary>The pattern.</summary>
    public required TextPattern Pattern { get; init; }

    /// <inheritdoc/>
    protected override IFrameDecoding CreateDecoding() => new TextPatternDecoding(Grammar, Pattern);
}
