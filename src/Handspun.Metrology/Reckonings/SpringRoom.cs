using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Reckonings;

/// <summary>How much room a valve spring, and the retainer above the stem seal, have left at full lift.</summary>
public static class SpringRoom
{
    // Bounds are far outside what such engines have (from memory); they catch wrong units, not wrong parts.
    private const double LeastHeight = 20;
    private const double MostHeight = 90;
    private const double LeastBind = 10;
    private const double MostBind = 70;
    private const double LeastLift = 3;
    private const double MostLift = 25;

    private static readonly string[] Cautions = [TradeCautions.ManualFirst, TradeCautions.SpringsUnderLoad, TradeCautions.OwnNumbers];

    /// <summary>Room to coil bind: installed height − coil bind − valve lift. Negative where the coils would meet.</summary>
    /// <param name="installedHeight">The spring's height in the closed head, seat to retainer.</param>
    /// <param name="coilBind">Its height when all coils touch; measured or from its own paper, never guessed.</param>
    /// <param name="valveLift">Full lift at the valve.</param>
    public static Reckoning ToCoilBind(Measured<Length>? installedHeight, Measured<Length>? coilBind, Measured<Length>? valveLift)
    {
        if (installedHeight is not { } height)
        {
            return Without("The installed height is missing: measure these springs in the head, from seat to retainer, valve shut.");
        }

        if (coilBind is not { } bind)
        {
            return Without("The coil bind is missing: take it from the paper of these springs, or press one together in a vice with soft jaws and measure it.");
        }

        if (valveLift is not { } lift)
        {
            return Without("The valve lift is missing: take the lift curve, or type lobe lift times rocker ratio.");
        }

        if ((PlausibleLength.Fault("the installed height", height, LeastHeight, MostHeight)
            ?? PlausibleLength.Fault("the coil bind", bind, LeastBind, MostBind)
            ?? PlausibleLength.Fault("the valve lift", lift, LeastLift, MostLift)) is { } fault)
        {
            return Without(fault);
        }

        if (bind.Value >= height.Value)
        {
            return Without("The coil bind is not less than the installed height: one of the two was measured or typed wrong; measure both again.");
        }

        return new([LengthSum.Difference("room to coil bind = installed height − coil bind − valve lift", height, bind, lift)], null, Cautions);
    }

    /// <summary>Room between retainer and stem seal: their distance with the valve shut − valve lift. Negative where they would meet.</summary>
    /// <param name="retainerToSeal">From the underside of the retainer to the top of the seal, valve shut.</param>
    /// <param name="valveLift">Full lift at the valve.</param>
    public static Reckoning ToSeal(Measured<Length>? retainerToSeal, Measured<Length>? valveLift)
    {
        if (retainerToSeal is not { } distance)
        {
            return Without("The distance from retainer to seal is missing: measure it with the valve shut and a light spring or none.");
        }

        if (valveLift is not { } lift)
        {
            return Without("The valve lift is missing: take the lift curve, or type lobe lift times rocker ratio.");
        }

        return (PlausibleLength.Fault("the distance from retainer to seal", distance, 3, 60) ?? PlausibleLength.Fault("the valve lift", lift, LeastLift, MostLift)) is { } fault
            ? Without(fault)
            : new([LengthSum.Difference("room to the seal = retainer to seal, valve shut − valve lift", distance, lift)], null, Cautions);
    }

    private static Reckoning Without(string missing) => new([], missing, Cautions);
}
