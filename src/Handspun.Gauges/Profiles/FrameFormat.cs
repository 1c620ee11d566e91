using Handspun.Gauges.Decoding;

namespace Handspun.Gauges.Profiles;

/// <summary>How the bytes of one kind of gauge become values.</summary>
public abstract record FrameFormat
{
    /// <summary>What the gauge is asked with by the frame's own protocol; empty where that has no such thing.</summary>
    public virtual ReadOnlyMemory<byte> Request => default;

    /// <summary>How often it is asked where the profile does not say; null where it is not.</summary>
    public virtual TimeSpan? RequestEvery => null;

    /// <summary>Whether its frames can say that the index passes.</summary>
    public abstract bool TellsIndex { get; }

    /// <summary>A codec for one link.</summary>
    public abstract IGaugeCodec CreateCodec();
}

/// <summary>Frames that are cut first and read then.</summary>
/// <param name="Cut">How they are cut.</param>
public abstract record CutFrameFormat(FrameCut Cut) : FrameFormat
{
    /// <summary>What reads them; a new one for each link.</summary>
    protected abstract IFrameDecoding CreateDecoding();

    /// <inheritdoc/>
    public override IGaugeCodec CreateCodec() => new FramedCodec(Cut.CreateFraming(), Cut.Check, CreateDecoding(), Cut.Gap);
}
