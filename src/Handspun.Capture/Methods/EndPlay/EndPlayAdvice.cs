using System.Globalization;
using Handspun.Metrology.EndPlay;

namespace Handspun.Capture.Methods.EndPlay;

/// <summary>What the hand on the shaft is told while it pushes and pulls.</summary>
internal static class EndPlayAdvice
{
    public static string For(EndPlayResult result, HeldNow now, CaptureSoFar soFar)
    {
        if (result.Holds.Count == 0)
        {
            return "Push the shaft to its stop and hold it there for half a second.";
        }

        var seen = string.Create(CultureInfo.InvariantCulture, $"{Math.Min(result.Cycles, soFar.Wanted):0} of {soFar.Wanted:0.#} cycles.");
        return now switch
        {
            { IsShort: true } => $"Hold it there. {seen}",
            { Stop: not null } => $"Now the other way, to the stop, and hold it. {seen}",
            _ => $"On to the stop, and hold it there for half a second. {seen}",
        };
    }
}
