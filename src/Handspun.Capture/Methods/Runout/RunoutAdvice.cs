using System.Globalization;
using Handspun.Metrology.Runout;

namespace Handspun.Capture.Methods.Runout;

/// <summary>What the hand on the wheel is told while the shaft turns.</summary>
internal static class RunoutAdvice
{
    public static string For(RunoutResult result, RunoutOutlook outlook, CaptureSoFar soFar)
    {
        if (result.Turns <= 0)
        {
            return "Turning. Keep on, slowly and evenly.";
        }

        if (outlook is { IsTooFast: true, LeastSecondsPerTurn: { } seconds })
        {
            return string.Create(CultureInfo.InvariantCulture, $"Turn slower: this gauge needs at least {seconds:0.0} seconds a turn.");
        }

        var seen = string.Create(CultureInfo.InvariantCulture, $"Keep turning: {Math.Min(result.Turns, soFar.Wanted):0.0} of {soFar.Wanted:0.#} turns");
        var left = Math.Ceiling(outlook.SecondsToGo ?? 0);
        var going = left is > 0 and < 60 ? string.Create(CultureInfo.InvariantCulture, $"{seen}, about {left:0} s to go.") : seen + ".";
        return soFar.Marks switch
        {
            0 => going,
            1 => going + " The mark is noted.",
            _ => string.Create(CultureInfo.InvariantCulture, $"{going} The mark is noted {soFar.Marks} times."),
        };
    }
}
