using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Decoding.Binary;

/// <summary>How the nibbles of a gauge lie in its bytes.</summary>
public enum NibblePacking
{
    /// <summary>Two in a byte, the one in the high half first.</summary>
    HighFirst,

    /// <summary>Two in a byte, the one in the low half first.</summary>
    LowFirst,

    /// <summary>One in a byte: a hexadecimal digit as an ASCII letter.</summary>
    HexDigit,

    /// <summary>One in a byte, in its low half; the high half is zero.</summary>
    OneEach,
}

/// <summary>Which nibbles of a frame mean what; all counted from 0.</summary>
public sealed record NibbleLayout
{
    /// <summary>How they lie in bytes.</summary>
    public NibblePacking Packing { get; init; }

    /// <summary>The decimal digits, the one that counts most first; 1 to 15.</summary>
    public required IReadOnlyList<int> Digits { get; init; }

    /// <summary>The nibble with the sign; null where there is none.</summary>
    public int? SignAt { get; init; }

    /// <summary>What it holds for a minus.</summary>
    public IReadOnlyList<int> Minus { get; init; } = [8];

    /// <summary>What it holds for a plus.</summary>
    public IReadOnlyList<int> Plus { get; init; } = [0];

    /// <summary>The nibble that says how many digits stand behind the point; null where it is always the same.</summary>
    public int? PointAt { get; init; }

    /// <summary>How many stand behind it, where no nibble says so.</summary>
    public int Decimals { get; init; }

    /// <summary>The nibble with the unit; null where there is none.</summary>
    public int? UnitAt { get; init; }

    /// <summary>What it holds for millimetres.</summary>
    public IReadOnlyList<int> Millimetre { get; init; } = [0];

    /// <summary>What it holds for inches.</summary>
    public IReadOnlyList<int> Inch { get; init; } = [1];

    /// <summary>The shortest frame in which they all lie, in bytes.</summary>
    public int Shortest
    {
        get
        {
            var last = Math.Max(Digits.Max(), Math.Max(SignAt ?? 0, Math.Max(PointAt ?? 0, UnitAt ?? 0)));
            return Packing is NibblePacking.HighFirst or NibblePacking.LowFirst ? last / 2 + 1 : last + 1;
        }
    }
}

/// <summary>A value in the binary-coded decimal digits of a frame.</summary>
/// <param name="layout">Which nibble means what.</param>
/// <param name="flags">The bits by which the gauge says something of itself.</param>
public sealed class NibbleDecoding(NibbleLayout layout, FlagBits flags) : IFrameDecoding
{
    private const int MostDigits = 15;

    private static readonly double[] Tens = [.. Enumerable.Range(0, MostDigits + 1).Select(power => Math.Pow(10, power))];

    private readonly int[] _digits = [.. layout.Digits];
    private readonly int _shortest = layout.Shortest;

    /// <inheritdoc/>
    public FrameResult Decode(ReadOnlySpan<byte> frame)
    {
        if (frame.Length < _shortest)
        {
            return FrameResult.Rejected(FrameFault.TooShort, frame.Length);
        }

        var told = flags.Read(frame, out var index);
        if (told.HasFlag(GaugeFlags.Overrange))
        {
            return FrameResult.Without(told, index);   // what its digits show then is nobody's number
        }

        long whole = 0;
        foreach (var at in _digits)
        {
            var digit = Nibble(frame, at);
            if (digit is < 0 or > 9)
            {
                return Rejected(at);
            }

            whole = whole * 10 + digit;
        }

        var decimals = layout.PointAt is { } point ? Nibble(frame, point) : layout.Decimals;
        if (decimals < 0 || decimals > _digits.Length)
        {
            return Rejected(layout.PointAt ?? 0);
        }

        var negative = false;
        if (layout.SignAt is { } sign && !TryChoose(Nibble(frame, sign), layout.Minus, layout.Plus, out negative))
        {
            return Rejected(sign);
        }

        if (layout.UnitAt is not { } unitAt)
        {
            return FrameResult.Of(Signed(whole / Tens[decimals], negative), null, told, index);
        }

        return TryChoose(Nibble(frame, unitAt), layout.Inch, layout.Millimetre, out var inch)
            ? FrameResult.Of(Signed(whole / Tens[decimals], negative), inch ? GaugeUnit.Inch : GaugeUnit.Millimetre, told, index)
            : FrameResult.Rejected(FrameFault.UnknownUnit, ByteOf(unitAt));
    }

    private static double Signed(double value, bool negative) => negative ? -value : value;

    private static bool TryChoose(int nibble, IReadOnlyList<int> yes, IReadOnlyList<int> no, out bool chosen)
    {
        chosen = Holds(yes, nibble);
        return chosen || Holds(no, nibble);
    }

    private static bool Holds(IReadOnlyList<int> list, int nibble)
    {
        for (var at = 0; at < list.Count; at++)
        {
            if (list[at] == nibble)
            {
                return true;
            }
        }

        return false;
    }

    private FrameResult Rejected(int nibble) => FrameResult.Rejected(FrameFault.NotANumber, ByteOf(nibble));

    private int ByteOf(int nibble) => layout.Packing is NibblePacking.HighFirst or NibblePacking.LowFirst ? nibble / 2 : nibble;

    // Below zero where the byte holds none.
    private int Nibble(ReadOnlySpan<byte> frame, int at) => layout.Packing switch
    {
        NibblePacking.HighFirst => at % 2 == 0 ? frame[at / 2] >> 4 : frame[at / 2] & 0xF,
        NibblePacking.LowFirst => at % 2 == 0 ? frame[at / 2] & 0xF : frame[at / 2] >> 4,
        NibblePacking.OneEach => frame[at] <= 0xF ? frame[at] : -1,
        _ => char.IsAsciiHexDigit((char)frame[at]) ? HexValue(frame[at]) : -1,
    };

    private static int HexValue(byte letter) => letter <= '9' ? letter - '0' : (letter | 0x20) - 'a' + 10;
}
