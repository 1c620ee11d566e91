using Handspun.Jobs.Lengths;
using Handspun.Station;

namespace Handspun.Wire;

/// <summary>The shop's settings.</summary>
/// <param name="Unit">The unit of lengths on screens: <c>in</c> or <c>mm</c>.</param>
/// <param name="Places">How many decimals are shown: 4 or 3 of an inch, 3 or 2 of a millimetre.</param>
/// <param name="StepAfterS">Seconds after a result before the bay goes on to the plan's next point; 0 where it never does.</param>
/// <param name="Mechanics">The names that are offered wherever a name is asked.</param>
/// <param name="UnitOfThisRun">The unit that this run of the station was told, which goes before <c>unit</c>; null where it was told none.</param>
internal sealed record SettingsMessage(string Unit, int Places, long StepAfterS, IReadOnlyList<string> Mechanics, string? UnitOfThisRun)
{
    public static SettingsMessage Of(ShopFile settings, ShopWays ways) => new(
        LengthText.Symbol(settings.Unit),
        settings.Unit.Places,
        (long)settings.StepAfter.TotalSeconds,
        settings.Mechanics,
        ways.UnitOfThisRun is { } told ? LengthText.Symbol(told) : null);
}
