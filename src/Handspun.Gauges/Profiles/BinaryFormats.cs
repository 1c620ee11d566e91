using Handspun.Gauges.Decoding;
using Handspun.Gauges.Decoding.Binary;
using Handspun.Gauges.Decoding.Registers;

namespace Handspun.Gauges.Profiles;

/// <summary>Frames with a value in their bits.</summary>
public sealed record BitFieldFormat() : CutFrameFormat(new FrameCut())
{
    /// <summary>Where it lies.</summary>
    public required BitField Field { get; init; }

    /// <summary>The bits by which the gauge says something of itself.</summary>
    public IReadOnlyList<FlagBit> Flags { get; init; } = [];

    /// <inheritdoc/>
    public override bool TellsIndex => Flags.Any(flag => flag.IsIndex);

    /// <inheritdoc/>
    protected override IFrameDecoding CreateDecoding() => new BitFieldDecoding(Field, new FlagBits(Flags, Field.Order));
}

/// <summary>Frames with a value in binary-coded decimal digits.</summary>
public sealed record NibbleFormat() : CutFrameFormat(new FrameCut())
{
    /// <summary>Which nibble means what.</summary>
    public required NibbleLayout Layout { get; init; }

    /// <summary>The bits by which the gauge says something of itself, and how they are counted.</summary>
    public IReadOnlyList<FlagBit> Flags { get; init; } = [];

    /// <summary>How bits are counted.</summary>
    public BitOrder Order { get; init; }

    /// <inheritdoc/>
    public override bool TellsIndex => Flags.Any(flag => flag.IsIndex);

    /// <inheritdoc/>
    protected override IFrameDecoding CreateDecoding() => new NibbleDecoding(Layout, new FlagBits(Flags, Order));
}

/// <summary>Registers read over Modbus RTU.</summary>
public sealed record RegisterFormat : FrameFormat
{
    private static readonly TimeSpan UsualPeriod = TimeSpan.FromMilliseconds(50);

    /// <summary>What is read.</summary>
    public required RegisterRead Read { get; init; }

    /// <summary>The bits by which the gauge says something of itself.</summary>
    public IReadOnlyList<FlagBit> Flags { get; init; } = [];

    /// <inheritdoc/>
    public override ReadOnlyMemory<byte> Request => Read.Request();

    /// <inheritdoc/>
    public override TimeSpan? RequestEvery => UsualPeriod;

    /// <inheritdoc/>
    public override bool TellsIndex => Flags.Any(flag => flag.IsIndex);

    /// <inheritdoc/>
    public override IGaugeCodec CreateCodec() => new RegisterCodec(Read, new FlagBits(Flags, BitOrder.RegisterLowFirst));
}
