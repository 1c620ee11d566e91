using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Decoding;

/// <summary>One frame of a gauge, decoded: a value, a word about the gauge, or what was wrong with it.</summary>
public readonly record struct FrameResult
{
    /// <summary>The number as it stood in the frame, neither scaled nor turned round; 0 where there is none.</summary>
    public double Value { get; private init; }

    /// <summary>The unit that the frame names; null where it names none and the profile's holds.</summary>
    public GaugeUnit? Unit { get; private init; }

    /// <summary>Whether there is a value.</summary>
    public bool HasValue { get; private init; }

    /// <summary>What was wrong.</summary>
    public FrameFault Fault { get; private init; }

    /// <summary>The byte of the frame, from 0, at which it went wrong.</summary>
    public int Position { get; private init; }

    /// <summary>What the gauge says of itself.</summary>
    public GaugeFlags Flags { get; private init; }

    /// <summary>Whether the frame says that the index passes.</summary>
    public bool IsIndex { get; private init; }

    /// <summary>A frame with a value.</summary>
    public static FrameResult Of(double value, GaugeUnit? unit = null, GaugeFlags flags = GaugeFlags.None, bool index = false) =>
        new() { Value = value, Unit = unit, HasValue = true, Flags = flags, IsIndex = index };

    /// <summary>A good frame without a value.</summary>
    public static FrameResult Without(GaugeFlags flags, bool index = false) => new() { Flags = flags, IsIndex = index };

    /// <summary>A frame that cannot be used.</summary>
    public static FrameResult Rejected(FrameFault fault, int position) => new() { Fault = fault, Position = position };
}
