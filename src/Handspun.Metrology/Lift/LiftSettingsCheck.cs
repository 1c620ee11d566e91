using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Lift;

/// <summary>Whether what was asked can be asked.</summary>
internal static class LiftSettingsCheck
{
    private const double LargestRatio = 4;

    /// <summary>What is wrong and what to do, in one sentence; null where nothing is.</summary>
    public static string? Fault(LiftSettings settings) =>
        settings.CheckingLift <= Length.Zero ? "The checking lift must be more than 0: take it from the cam card, usually 0.050 in or 1 mm."
        : settings.RockerRatio is { } ratio && !(ratio > 0 && ratio <= LargestRatio) ? $"A rocker ratio of {ratio:0.###} cannot be: it is valve movement over tappet movement, mostly 1.5 to 1.8."
        : !(settings.RockerRatioU95 >= 0) || !double.IsFinite(settings.RockerRatioU95) ? "The uncertainty of the rocker ratio must be 0 or more."
        : null;
}
