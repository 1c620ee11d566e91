using Handspun.Jobs.Lengths;
using Handspun.Metrology.Reckonings;

namespace Handspun.Reckonings;

/// <summary>Room that a valve spring has left at full lift.</summary>
internal sealed class SpringRoomSheet : IReckoningSheet
{
    /// <inheritdoc/>
    public string Code => "spring-room";

    /// <inheritdoc/>
    public string Title => "Room in the valve springs";

    /// <inheritdoc/>
    public IReadOnlyList<ReckoningField> Fields(LengthUnit unit) =>
    [
        new("installed_height", "Installed height", "these springs, seat to retainer, valve shut"),
        new("coil_bind", "Coil bind", "all coils touching; measured or from their paper"),
        new("valve_lift", "Valve lift", "lobe lift times rocker ratio"),
        new(TypedReckoning.Known, "Each known to within ±", "the tool's division will do"),
    ];

    /// <inheritdoc/>
    public Reckoning Work(TypedReckoning typed) => SpringRoom.ToCoilBind(typed.Length("installed_height"), typed.Length("coil_bind"), typed.Length("valve_lift"));
}
