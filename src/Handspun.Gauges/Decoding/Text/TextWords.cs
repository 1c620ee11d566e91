using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Decoding.Text;

/// <summary>What the words of one frame have said so far.</summary>
internal ref struct TextWords
{
    public GaugeUnit? Unit { get; set; }

    public GaugeFlags Flags { get; private set; }

    public bool IsIndex { get; private set; }

    public void Add(TextToken token)
    {
        Flags |= token.Flag;
        IsIndex |= token.IsIndex;
    }

    public readonly FrameResult Of(double value) => FrameResult.Of(value, Unit, Flags, IsIndex);

    public readonly FrameResult WithoutValue() => FrameResult.Without(Flags, IsIndex);
}
