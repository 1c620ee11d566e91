namespace Handspun.Gauges.Decoding.Binary;

/// <summary>How a whole number says that it is negative.</summary>
public enum SignRule
{
    /// <summary>It never is.</summary>
    None,

    /// <summary>Two's complement.</summary>
    TwosComplement,

    /// <summary>A bit of its own, set for a minus.</summary>
    Bit,
}

/// <summary>Where in a frame the bits of a value lie.</summary>
public sealed record BitField
{
    /// <summary>How bits are counted.</summary>
    public BitOrder Order { get; init; }

    /// <summary>The first bit of the value, counted from 0.</summary>
    public required int From { get; init; }

    /// <summary>Its bits, 1 to 32.</summary>
    public required int Width { get; init; }

    /// <summary>How it is signed.</summary>
    public SignRule Sign { get; init; }

    /// <summary>The bit of its sign, where it has one of its own.</summary>
    public int SignAt { get; init; }

    /// <summary>The bit that tells the unit; null where none does.</summary>
    public UnitBit? Unit { get; init; }

    /// <summary>The shortest frame in which they all lie, in bytes.</summary>
    public int Shortest => Math.Max(From + Width, Math.Max(SignAt, Unit?.Bit ?? 0) + 1) + 7 >> 3;
}

/// <summary>A value in the bits of a frame.</summary>
/// <param name="field">Where it lies.</param>
/// <param name="flags">The bits by which the gauge says something of itself.</param>
public sealed class BitFieldDecoding(BitField field, FlagBits flags) : IFrameDecoding
{
    private readonly int _shortest = field.Shortest;

    /// <inheritdoc/>
    public FrameResult Decode(ReadOnlySpan<byte> frame)
    {
        if (frame.Length < _shortest)
        {
            return FrameResult.Rejected(FrameFault.TooShort, frame.Length);
        }

        var raw = Bits.Field(frame, field.From, field.Width, field.Order);
        double value = field.Sign switch
        {
            SignRule.TwosComplement => Bits.Signed(raw, field.Width),
            SignRule.Bit when Bits.At(frame, field.SignAt, field.Order) => -(double)raw,
            _ => raw,
        };
        var told = flags.Read(frame, out var index);
        return FrameResult.Of(value, field.Unit?.Read(frame, field.Order), told, index);
    }
}
