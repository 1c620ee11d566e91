using System.Globalization;
using Handspun.Metrology.Bore;

namespace Handspun.Capture.Methods.Bore;

/// <summary>What the hand at the gauge is told while it rocks, or rolls a body through.</summary>
internal static class BoreAdvice
{
    private const int EnoughToTell = 4;   // turnings after which a bore that still is none has a reason

    public static string For(BoreResult result, CaptureSoFar soFar)
    {
        if (result.Turnings == 0)
        {
            return result.Outside
                ? "Roll the body slowly through under the gauge, past its largest size and back."
                : "Rock the gauge slowly until the reading falls, turns and rises again.";
        }

        if (result.Status != BoreStatus.Measured && result is { Turnings: >= EnoughToTell, Missing: { } missing })
        {
            return missing;
        }

        var go = result.Outside ? "Roll on, slowly, back and past the largest size" : "Rock on, slowly, back and past the smallest reading";
        var seen = string.Create(CultureInfo.InvariantCulture, $"{go}: {Math.Min(result.Passes, soFar.Wanted):0} of {soFar.Wanted:0.#} passes.");
        return result.Warnings.Contains(BoreWarning.TurnedBackEarly) || result.Warnings.Contains(BoreWarning.ShallowRock)
            ? seen + " A little further each way."
            : seen;
    }
}
