using Handspun.Gauges.Framing;

namespace Handspun.Gauges.Profiles;

/// <summary>Where a frame ends.</summary>
public enum CutKind
{
    /// <summary>At CR, LF or both.</summary>
    Line,

    /// <summary>At given bytes.</summary>
    Terminator,

    /// <summary>After so many bytes.</summary>
    Length,

    /// <summary>Where a byte in it says.</summary>
    Prefixed,

    /// <summary>At a silence.</summary>
    Silence,
}

/// <summary>How a stream is cut into frames.</summary>
public sealed record FrameCut
{
    /// <summary>The longest frame that a profile may ask for, in bytes.</summary>
    public const int MostBytes = 256;

    /// <summary>Where a frame ends.</summary>
    public CutKind Kind { get; init; } = CutKind.Line;

    /// <summary>Bytes in the longest frame, 8 to <see cref="MostBytes"/>.</summary>
    public int Longest { get; init; } = 64;

    /// <summary>Bytes in each frame, where they all have the same.</summary>
    public int Length { get; init; }

    /// <summary>What a frame starts with; may be empty.</summary>
    public ReadOnlyMemory<byte> Start { get; init; }

    /// <summary>What a frame ends with; may be empty but for a terminator.</summary>
    public ReadOnlyMemory<byte> End { get; init; }

    /// <summary>Where the byte with the count stands.</summary>
    public int CountAt { get; init; }

    /// <summary>Bytes of the whole frame that the count leaves out.</summary>
    public int CountAdds { get; init; }

    /// <summary>A silence this long ends a frame; null where it does not.</summary>
    public TimeSpan? Gap { get; init; }

    /// <summary>What a frame carries against damage.</summary>
    public FrameCheck Check { get; init; }

    /// <summary>A framing for one link.</summary>
    public IFraming CreateFraming() => Kind switch
    {
        CutKind.Line => new LineFraming(Longest),
        CutKind.Terminator => new TerminatorFraming(End, Longest),
        CutKind.Length => new FixedFraming(Length, Start, End, Resyncs),
        CutKind.Prefixed => new PrefixedFraming(Start, CountAt, CountAdds, Longest),
        _ => new SilenceFraming(Longest),
    };

    // Without something that tells a whole frame from two halves, a new start within a bad frame would be a guess.
    private bool Resyncs => Check.Kind != CheckKind.None || !End.IsEmpty;
}
