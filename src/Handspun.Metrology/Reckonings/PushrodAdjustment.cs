using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Reckonings;

/// <summary>How far to turn a pushrod's adjuster from no play to the preload that the lifter wants, lifter on its base circle.</summary>
public static class PushrodAdjustment
{
    /// <summary>Flats of a hexagon.</summary>
    public const int Flats = 6;

    private const double MostPreload = 6;

    private static readonly string[] Cautions =
        [TradeCautions.ManualFirst, TradeCautions.HandOnly, TradeCautions.PushrodsFree, TradeCautions.NoGrinder, TradeCautions.LetLiftersSettle];

    /// <summary>Turns, flats, and what the nearest whole flat gives.</summary>
    /// <param name="preload">How far the plunger is to be pushed in, from the lifter's paper; its uncertainty is how surely no play was found.</param>
    /// <param name="thread">The adjuster's thread; null where nobody said.</param>
    public static Reckoning FromNoPlay(Measured<Length> preload, ThreadPitch? thread)
    {
        if (thread is null || thread.PerTurn <= Length.Zero)
        {
            return new([], "The adjuster's thread is missing: take it from the pushrods' paper, or count its turns over half an inch and double.", Cautions);
        }

        if (PlausibleLength.Fault("the wanted preload", preload, 0.1, MostPreload) is { } fault)
        {
            return new([], fault, Cautions);
        }

        var perTurn = thread.PerTurn.Millimetres;
        var (turns, doubt) = (preload.Value.Millimetres / perTurn, preload.U95.Millimetres / perTurn);
        var whole = Math.Round(Flats * turns, MidpointRounding.AwayFromZero);
        var perFlat = Length.FromMillimetres(perTurn / Flats);
        return new(
            [
                new()
                {
                    Formula = "turns = wanted preload ÷ movement in one turn",
                    Pattern = "{0} ÷ {1}",
                    Numbers = [WorkedNumber.Of(preload.Value), WorkedNumber.Of(thread.PerTurn)],
                    Result = WorkedNumber.Plain(turns, 2, "turns"),
                    U95 = WorkedNumber.Plain(doubt, 2, "turns"),
                },
                new()
                {
                    Formula = "flats = turns × 6",
                    Pattern = "{0} × {1}",
                    Numbers = [WorkedNumber.Plain(turns, 3, "turns"), WorkedNumber.Plain(Flats, 0)],
                    Result = WorkedNumber.Plain(Flats * turns, 1, "flats"),
                    U95 = WorkedNumber.Plain(Flats * doubt, 1, "flats"),
                },
                new()
                {
                    Formula = "preload at whole flats = flats × movement in one flat",
                    Pattern = "{0} × {1}",
                    Numbers = [WorkedNumber.Plain(whole, 0, "flats"), WorkedNumber.Of(perFlat)],
                    Result = WorkedNumber.Of(Length.FromMillimetres(whole * perFlat.Millimetres)),
                    U95 = WorkedNumber.Of(preload.U95),
                },
            ],
            null,
            Cautions);
    }
}
