using Handspun.Jobs.Lengths;

namespace Handspun.Station;

/// <summary>The shop's ways as they hold now: they can be changed while the station runs. Safe to use from several threads.</summary>
/// <param name="atStart">What the file said when the station started.</param>
/// <param name="unitOfThisRun">The unit that this run of the station was told, which goes before the file's; null where it was told none.</param>
internal sealed class ShopWays(ShopFile atStart, LengthUnit? unitOfThisRun = null)
{
    private volatile ShopFile _now = atStart;

    /// <summary>What the file says.</summary>
    public ShopFile Now
    {
        get => _now;
        set => _now = value;
    }

    /// <summary>The unit that this run of the station was told, whatever the file says; null where it was told none.</summary>
    public LengthUnit? UnitOfThisRun => unitOfThisRun;

    /// <summary>The unit of lengths on screens. Where this run was told the file's own unit, the file's last place holds.</summary>
    public LengthUnit Unit => unitOfThisRun is { } told && told.IsInch != _now.Unit.IsInch ? told : _now.Unit;
}
