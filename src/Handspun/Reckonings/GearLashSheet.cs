using Handspun.Jobs.Lengths;
using Handspun.Metrology.Reckonings;

namespace Handspun.Reckonings;

/// <summary>Lash of two gears, from the play that an indicator sees.</summary>
internal sealed class GearLashSheet : IReckoningSheet
{
    /// <inheritdoc/>
    public string Code => "gear-lash";

    /// <inheritdoc/>
    public string Title => "Lash of two gears";

    /// <inheritdoc/>
    public IReadOnlyList<ReckoningField> Fields(LengthUnit unit) =>
    [
        new("play", "Play at the indicator", "stop to stop, the other gear held"),
        new("pitch_radius", "Pitch radius of the gear", "half its pitch diameter"),
        new("indicator_radius", "Radius at the indicator", "from the gear's axis to the plunger"),
        new(TypedReckoning.Known, "Each known to within ±", "the tool's division will do"),
    ];

    /// <inheritdoc/>
    public Reckoning Work(TypedReckoning typed)
    {
        var (play, pitch, indicator) = (typed.Length("play"), typed.Length("pitch_radius"), typed.Length("indicator_radius"));
        return pitch is { } gear && indicator is { } plunger
            ? GearLash.AtPitchCircle(play, gear, plunger)
            : GearLash.AtPitchCircle(null, default, default) with { Missing = "A radius is missing: type the gear's pitch radius, and how far from the gear's axis the plunger touches." };
    }
}
