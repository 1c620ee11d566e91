using Handspun.Jobs.Lengths;
using Handspun.Metrology.Reckonings;

namespace Handspun.Reckonings;

/// <summary>Room between retainer and stem seal at full lift.</summary>
internal sealed class SealRoomSheet : IReckoningSheet
{
    /// <inheritdoc/>
    public string Code => "seal-room";

    /// <inheritdoc/>
    public string Title => "Room between retainer and seal";

    /// <inheritdoc/>
    public IReadOnlyList<ReckoningField> Fields(LengthUnit unit) =>
    [
        new("retainer_to_seal", "Retainer to seal", "valve shut, with a light spring or none"),
        new("valve_lift", "Valve lift", "lobe lift times rocker ratio"),
        new(TypedReckoning.Known, "Each known to within ±", "the tool's division will do"),
    ];

    /// <inheritdoc/>
    public Reckoning Work(TypedReckoning typed) => SpringRoom.ToSeal(typed.Length("retainer_to_seal"), typed.Length("valve_lift"));
}
