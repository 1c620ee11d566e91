using System.Globalization;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Points;
using Handspun.Metrology.Runout;

namespace Handspun.Setups;

/// <summary>How the indicator stands at a shaft end.</summary>
internal sealed class RunoutSheet : ISetupSheet
{
    /// <inheritdoc/>
    public PointKind Kind => PointKind.Runout;

    /// <inheritdoc/>
    public string Title => "How the indicator stands";

    /// <inheritdoc/>
    public string Tell(PointSetup? setup, LengthUnit unit)
    {
        var said = setup as RunoutSetup;
        var stand = said?.LeverDegrees is { } lever
            ? string.Create(CultureInfo.InvariantCulture, $"A lever at {lever:0.#}° to the surface: its readings are multiplied by {Misalignment.LeverFactor(lever):0.0000}.")
            : "A plunger, square to the shaft: its readings are taken as they are.";
        var warmth = said?.Celsius is { } celsius ? string.Create(CultureInfo.InvariantCulture, $" Measured at {celsius:0.#} °C.") : "";
        return stand + warmth;
    }

    /// <inheritdoc/>
    public IReadOnlyList<SetupField> Fields(PointSetup? setup, LengthUnit unit)
    {
        var said = setup as RunoutSetup;
        return
        [
            new("lever_deg", "Lever to surface", SetupField.Number(said?.LeverDegrees)) { Hint = "degrees; empty for a plunger" },
            new("celsius", "Temperature", SetupField.Number(said?.Celsius)) { Hint = "°C; empty where nobody read it" },
            new("from_bearing", "From the bearing's middle", LengthText.AsTyped(said?.FromBearingMillimetres, unit)) { Hint = "outward; only for both ends of a crank" },
            new("division", "Division of the tool", LengthText.AsTyped(said?.DivisionMillimetres, unit)) { Hint = "that the distance was measured with" },
        ];
    }

    /// <inheritdoc/>
    public PointSetup Read(TypedSheet typed)
    {
        var setup = new RunoutSetup
        {
            LeverDegrees = typed.Number("lever_deg", "The lever's angle", "15"),
            Celsius = typed.SignedNumber("celsius", "The temperature", "22"),
            FromBearingMillimetres = typed.Length("from_bearing", "The distance from the bearing")?.Millimetres,
            DivisionMillimetres = typed.Length("division", "The division")?.Millimetres,
        };
        return TypedSheet.Sound(setup);
    }
}
