using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Profiles;

/// <summary>Reads the section <c>[value]</c> of a profile.</summary>
internal static class ValueReader
{
    private const double LeastScale = 1e-9;
    private const double MostScale = 1e6;
    private const double MostTravel = 1000;

    /// <summary>The units by their names in profiles.</summary>
    public static IReadOnlyDictionary<string, GaugeUnit> Units { get; } = new Dictionary<string, GaugeUnit> { ["mm"] = GaugeUnit.Millimetre, ["in"] = GaugeUnit.Inch };

    /// <summary>Reads it.</summary>
    public static (ValueFormat Value, GaugeAccuracy Accuracy) Read(ProfileSection section)
    {
        var value = new ValueFormat
        {
            Unit = section.Choice("unit", "mm", Units),
            Scale = section.Number("scale", 1, LeastScale, MostScale),
            InchScale = section.MaybeNumber("scale_in", LeastScale, MostScale),
            Inverted = section.Switch("inverted") ?? false,
            TravelMillimetres = section.Number("travel_mm", 0, 0, MostTravel),
        };
        var accuracy = new GaugeAccuracy
        {
            ResolutionMillimetres = section.Number("resolution_mm", 0, 0, 1),
            ErrorLimitMillimetres = section.Number("error_limit_mm", 0, 0, 10),
        };
        section.RefuseTheRest();
        return (value, accuracy);
    }
}
