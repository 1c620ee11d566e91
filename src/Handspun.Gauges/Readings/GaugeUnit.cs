namespace Handspun.Gauges.Readings;

/// <summary>The unit in which a gauge sends its values.</summary>
public enum GaugeUnit
{
    /// <summary>Millimetres.</summary>
    Millimetre,

    /// <summary>Inches; 1 in = 25.4 mm exactly.</summary>
    Inch,
}
