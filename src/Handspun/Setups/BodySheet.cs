using Handspun.Jobs.Lengths;
using Handspun.Jobs.Points;

namespace Handspun.Setups;

/// <summary>The reference that a gauge was set on before a body is rolled through under it.</summary>
internal sealed class BodySheet : ISetupSheet
{
    /// <inheritdoc/>
    public PointKind Kind => PointKind.OutsideSize;

    /// <inheritdoc/>
    public string Title => "Setting";

    /// <inheritdoc/>
    public string Tell(PointSetup? setup, LengthUnit unit) => SettingFields.Tell(setup as BodySetup ?? new BodySetup(), "a larger body", unit);

    /// <inheritdoc/>
    public IReadOnlyList<SetupField> Fields(PointSetup? setup, LengthUnit unit) => [.. SettingFields.Of(setup as BodySetup, "Pin or block", "A larger body reads", unit)];

    /// <inheritdoc/>
    public PointSetup Read(TypedSheet typed) => TypedSheet.Sound(SettingFields.Read(new BodySetup(), typed, "pin or block"));
}
