using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Metrology.Bore;
using Handspun.Metrology.Quantities;

namespace Handspun.Capture.Methods.Bore;

/// <summary>What the readings of a gauge that is rocked in a bore say, or those of one under which a body is rolled through.</summary>
/// <param name="Result">The bore or the body with all that proves it.</param>
/// <param name="Setup">What was said of the gauge and the place; null where nothing was.</param>
public sealed record BoreFinding(BoreResult Result, SettingSetup? Setup) : CaptureFinding
{
    private const int TurningsOfATouch = 1;

    /// <inheritdoc/>
    public override bool IsMeasured => Result.Status == BoreStatus.Measured;

    /// <inheritdoc/>
    public override string? Missing => Result.Missing;

    /// <inheritdoc/>
    public override double Count => Result.Passes;

    /// <inheritdoc/>
    /// <remarks>Put in, taken out, set down: the reading moves and does not turn again and again.</remarks>
    public override bool IsOnlyTouch => !IsMeasured && Result.Turnings <= TurningsOfATouch;

    /// <inheritdoc/>
    public override ResultFigures Figures => new BoreFigures
    {
        Outside = Result.Outside,
        Readings = Result.Readings,
        Rejected = Result.Knocks.Count,
        Passes = Result.Passes,
        DeviationMillimetres = Result.Deviation?.Millimetres,
        DeviationU95Millimetres = Result.DeviationU95?.Millimetres,
        SizeMillimetres = Result.Size?.Millimetres,
        SizeU95Millimetres = Result.SizeU95?.Millimetres,
        OwnU95Millimetres = Result.Budget is { } budget ? Expanded(budget.Fit, budget.GaugeError) : null,
        SharedU95Millimetres = Result.Budget is { } parts ? Expanded(parts.Shown, parts.Size) : null,
        SpreadMillimetres = Result.Spread?.Millimetres,
        ByPassMillimetres = IsMeasured ? [.. Result.ByPass.Select(pass => pass.Millimetres)] : null,
        SettingMillimetres = Setup?.SettingMillimetres,
        SettingU95Millimetres = Setup?.SettingU95Millimetres,
        ShownMillimetres = Setup?.ShownMillimetres ?? 0,
        DepthMillimetres = (Setup as BoreSetup)?.DepthMillimetres,
        ClockHours = (Setup as BoreSetup)?.ClockHours,
    };

    /// <inheritdoc/>
    public override (Length? Value, Length? U95) Headline => Result.Size is null ? (Result.Deviation, Result.DeviationU95) : (Result.Size, Result.SizeU95);

    /// <inheritdoc/>
    public override IEnumerable<RecordWarning> Warnings => Result.Warnings.Select(InWords);

    /// <inheritdoc/>
    public override IEnumerable<RecordWarning> LiveWarnings(CaptureSoFar soFar) =>
        Result.Warnings.Where(warning => warning is not BoreWarning.FewPasses).Select(InWords);

    /// <inheritdoc/>
    public override LiveFigures Live(CaptureSoFar soFar) => new BoreLive
    {
        Passes = Result.Passes,
        PassesWanted = soFar.Wanted,
        Turnings = Result.Turnings,
        SpreadMillimetres = Result.Spread?.Millimetres,
        DeviationMillimetres = Result.Deviation?.Millimetres,
        DeviationU95Millimetres = Result.DeviationU95?.Millimetres,
        SizeMillimetres = Result.Size?.Millimetres,
        SizeU95Millimetres = Result.SizeU95?.Millimetres,
    };

    /// <inheritdoc/>
    public override string Advice(CaptureSoFar soFar) => BoreAdvice.For(Result, soFar);

    private static double Expanded(double first, double second) => 2 * Math.Sqrt(first * first + second * second);

    private RecordWarning InWords(BoreWarning warning) => new(BoreWarningText.Code(warning), BoreWarningText.Sentence(warning, Result.Outside));
}
