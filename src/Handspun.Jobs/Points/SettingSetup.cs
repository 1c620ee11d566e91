using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Points;

/// <summary>What a gauge that compares was set to before it measures a size.</summary>
/// <remarks>Nothing in it is guessed: without a setting there is a deviation from the gauge's zero and no size.</remarks>
public abstract record SettingSetup : PointSetup
{
    private const double LeastKnown = 0.1;
    private const double MostTravel = 15;
    private static readonly PlausibleLength Sizes = new(Length.FromMillimetres(3), Length.FromMillimetres(300));

    /// <summary>Size of what the gauge was set to, a ring, a pin, a block or a micrometer, in millimetres; null where it is not known.</summary>
    public double? SettingMillimetres { get; init; }

    /// <summary>Its expanded uncertainty (k = 2), in millimetres: from its certificate, or the micrometer's division. Null only without a setting.</summary>
    public double? SettingU95Millimetres { get; init; }

    /// <summary>What the gauge showed there at its turning point, in millimetres; 0 where it was zeroed.</summary>
    public double ShownMillimetres { get; init; }

    /// <summary>Whether the reading falls when the gauge spans more, as on a bore gauge's dial whose plunger a smaller bore pushes in.</summary>
    public bool LargerReadsLower { get; init; }

    /// <summary>What is set to, in words, such as <c>what a bore gauge is set to</c>.</summary>
    protected abstract string WhatIsSet { get; }

    /// <summary>What it is set with, in words, such as <c>ring or micrometer</c>.</summary>
    protected abstract string SetWith { get; }

    /// <inheritdoc/>
    public override IEnumerable<string> Problems()
    {
        if (SettingMillimetres is { } size && Sizes.Doubt(Length.FromMillimetres(size), WhatIsSet) is { } doubt)
        {
            yield return doubt;
        }

        if (SettingMillimetres is null != SettingU95Millimetres is null)
        {
            yield return $"Give the size of the {SetWith} and how well it is known together, or neither.";
        }

        if (SettingU95Millimetres is not null and not (>= 0 and <= LeastKnown))
        {
            yield return $"A {SetWith} is known to within a tenth of a millimetre: type its uncertainty again with its unit.";
        }

        if (Math.Abs(ShownMillimetres) is not <= MostTravel)
        {
            yield return "The gauge cannot have shown so much at its setting: type again what it showed there, with its unit, or 0 mm where it was zeroed.";
        }
    }
}
