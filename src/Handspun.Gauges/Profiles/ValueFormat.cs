using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Profiles;

/// <summary>What a number in a frame stands for.</summary>
public sealed record ValueFormat
{
    /// <summary>The unit of a frame that names none.</summary>
    public GaugeUnit Unit { get; init; } = GaugeUnit.Millimetre;

    /// <summary>What one count stands for, in the unit; above 0.</summary>
    public double Scale { get; init; } = 1;

    /// <summary>What one count stands for while the gauge is set to inches, in inches; null where it is the same number.</summary>
    public double? InchScale { get; init; }

    /// <summary>Whether the gauge counts plunger in as negative.</summary>
    public bool Inverted { get; init; }

    /// <summary>How far the plunger goes, in millimetres; 0 where it is not known.</summary>
    public double TravelMillimetres { get; init; }

    /// <summary>What a number in a frame is multiplied by, the direction of counting with it.</summary>
    /// <param name="unit">The unit in which it is.</param>
    public double Factor(GaugeUnit unit) => (unit == GaugeUnit.Inch ? InchScale ?? Scale : Scale) * (Inverted ? -1 : 1);
}
