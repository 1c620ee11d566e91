using Handspun.Jobs.Points;
using Handspun.Metrology.Bore;
using Handspun.Metrology.Motion;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;

namespace Handspun.Capture.Methods.Bore;

/// <summary>A bore: a hand rocks a two-point gauge in it, several times through the turning point, at the place that was said.</summary>
internal sealed class BoreCapture : ICaptureMethod
{
    /// <inheritdoc/>
    public PointKind Kind => PointKind.Bore;

    /// <inheritdoc/>
    public CapturePace Pace { get; } = new();

    /// <inheritdoc/>
    public double UsuallyWanted => 6;

    /// <inheritdoc/>
    public bool TakesMarks => false;

    /// <inheritdoc/>
    public CaptureFinding Nothing { get; } = new BoreFinding(new BoreResult { Status = BoreStatus.TooShort, Readings = 0 }, null);

    /// <inheritdoc/>
    public MethodWords Words { get; } = new()
    {
        Waiting = "Waiting for the first rock",
        Running = "Rocking",
        Again = "Rock again, here or at the next place",
        SoFar = "Bore so far",
        Counted = "passes",
        HowToStart = "With the gauge in the bore, rock it slowly past its smallest reading and back, three times. The capture starts by itself.",
        HowToRepeat = "Rock again for another record; at each place the newest counts.",
        AfterTouch = "The gauge moved, but not through a turning point. Rock it slowly until the reading falls, turns and rises again, three times there and back.",
        GaugeGone = "The gauge is gone: plug it in again, then rock it again.",
        Enough = "Enough. Hold the gauge still.",
        NotRunning = "rock the gauge, or start a capture by hand",
    };

    /// <inheritdoc/>
    public bool Moves(ReadOnlySpan<double> seconds, ReadOnlySpan<double> millimetres, GaugeTraits gauge) =>
        ShaftMotion.MovesAnywhere(seconds, millimetres, gauge.Resolution);

    /// <inheritdoc/>
    public CaptureFinding Measure(RotationCapture readings, GaugeTraits gauge, MethodWish wish)
    {
        var setup = wish.Setup as BoreSetup;
        return new BoreFinding(BoreMethod.Measure(readings.Seconds.Span, readings.Millimetres.Span, gauge, SettingsOf(setup, wish.Wanted)), setup);
    }

    /// <summary>What is asked of the method.</summary>
    /// <param name="setup">What the gauge was set to; null where nothing was said.</param>
    /// <param name="wanted">Passes that are enough.</param>
    public static BoreSettings SettingsOf(SettingSetup? setup, double wanted) => new()
    {
        PassesWanted = (int)Math.Ceiling(wanted),
        LargerReadsHigher = setup?.LargerReadsLower != true,
        Setting = SettingOf(setup),
    };

    /// <summary>What the gauge was set to; null where it was not said, and nothing is guessed.</summary>
    private static BoreSetting? SettingOf(SettingSetup? setup) => setup is { SettingMillimetres: { } size, SettingU95Millimetres: { } known }
        ? new(Length.FromMillimetres(size), Length.FromMillimetres(known), Length.FromMillimetres(setup.ShownMillimetres), Length.Zero)
        : null;
}
