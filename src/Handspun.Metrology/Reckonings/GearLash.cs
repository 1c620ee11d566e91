using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Reckonings;

/// <summary>The lash of two gears, from the play that an indicator sees at the end of its travel both ways.</summary>
public static class GearLash
{
    private static readonly string[] Cautions = [TradeCautions.ManualFirst, TradeCautions.HandOnly, TradeCautions.FingersOutOfGears];

    /// <summary>Lash at the pitch circle = play × pitch radius ÷ radius at which the indicator stands.</summary>
    /// <param name="play">Play between both stops, the other gear held; as an end play is measured.</param>
    /// <param name="pitchRadius">Half the pitch diameter of the gear that moves.</param>
    /// <param name="indicatorRadius">From the gear's axis to where the plunger touches.</param>
    public static Reckoning AtPitchCircle(Measured<Length>? play, Measured<Length> pitchRadius, Measured<Length> indicatorRadius)
    {
        if (play is not { } seen)
        {
            return new([], "The play is missing: hold one gear, rock the other between both stops under the indicator, and capture it as an end play.", Cautions);
        }

        if ((PlausibleLength.Fault("the play", seen, 0, 3)
            ?? PlausibleLength.Fault("the pitch radius", pitchRadius, 5, 150)
            ?? PlausibleLength.Fault("the radius at the indicator", indicatorRadius, 5, 300)) is { } fault)
        {
            return new([], fault, Cautions);
        }

        // A product and a quotient: relative doubts add as squares (JCGM 100:2008, 5.1.6), written so that no play at all divides by nothing.
        var ratio = pitchRadius.Value.Millimetres / indicatorRadius.Value.Millimetres;
        var lash = seen.Value.Millimetres * ratio;
        var u95 = Math.Sqrt(
            Math.Pow(ratio * seen.U95.Millimetres, 2)
            + Math.Pow(lash * pitchRadius.U95.Millimetres / pitchRadius.Value.Millimetres, 2)
            + Math.Pow(lash * indicatorRadius.U95.Millimetres / indicatorRadius.Value.Millimetres, 2));
        var worked = new Worked
        {
            Formula = "lash = play × pitch radius ÷ radius at the indicator",
            Pattern = "{0} × {1} ÷ {2}",
            Numbers = [WorkedNumber.Of(seen.Value), WorkedNumber.Of(pitchRadius.Value), WorkedNumber.Of(indicatorRadius.Value)],
            Result = WorkedNumber.Of(Length.FromMillimetres(lash)),
            U95 = WorkedNumber.Of(Length.FromMillimetres(u95)),
        };
        return new([worked], null, Cautions);
    }
}
