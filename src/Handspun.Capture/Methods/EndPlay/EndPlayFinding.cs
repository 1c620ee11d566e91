using Handspun.Jobs.Records;
using Handspun.Metrology.EndPlay;
using Handspun.Metrology.Quantities;

namespace Handspun.Capture.Methods.EndPlay;

/// <summary>What the readings of a shaft that is pushed and pulled say.</summary>
/// <param name="Result">The end play with all that proves it.</param>
/// <param name="Now">Whether it is held at the end of the readings.</param>
public sealed record EndPlayFinding(EndPlayResult Result, HeldNow Now) : CaptureFinding
{
    private const int ChangesOfATouch = 1;

    /// <inheritdoc/>
    public override bool IsMeasured => Result.Status == EndPlayStatus.Measured;

    /// <inheritdoc/>
    public override string? Missing => Result.Missing;

    /// <inheritdoc/>
    public override double Count => Result.Cycles;

    /// <inheritdoc/>
    /// <remarks>One way only: a hand that let go, or a stand that was pushed.</remarks>
    public override bool IsOnlyTouch => !IsMeasured && Result.Holds.Zip(Result.Holds.Skip(1)).Count(pair => pair.First.Stop != pair.Second.Stop) <= ChangesOfATouch;

    /// <inheritdoc/>
    public override ResultFigures Figures => new EndPlayFigures
    {
        Readings = Result.Readings,
        Rejected = Result.Knocks.Count,
        Cycles = Result.Cycles,
        EndPlayMillimetres = Result.EndPlay?.Millimetres,
        EndPlayU95Millimetres = Result.EndPlayU95?.Millimetres,
        SpreadMillimetres = Result.Spread?.Millimetres,
        ByCycleMillimetres = IsMeasured ? Result.ByCycleMillimetres : null,
        HoldsLeftOut = IsMeasured ? Result.Holds.Count(hold => !hold.Counts) : 0,
    };

    /// <inheritdoc/>
    public override (Length? Value, Length? U95) Headline => (Result.EndPlay, Result.EndPlayU95);

    /// <inheritdoc/>
    public override IEnumerable<RecordWarning> Warnings => Result.Warnings.Select(InWords);

    /// <inheritdoc/>
    public override IEnumerable<RecordWarning> LiveWarnings(CaptureSoFar soFar) =>
        Result.Warnings.Where(warning => warning is not EndPlayWarning.FewCycles).Select(InWords);

    /// <inheritdoc/>
    public override LiveFigures Live(CaptureSoFar soFar) => new EndPlayLive
    {
        Cycles = Result.Cycles,
        CyclesWanted = soFar.Wanted,
        HeldAt = Now.Stop switch { Stop.Low => "low", Stop.High => "high", _ => null },
        HeldSeconds = Now.Seconds,
        SpreadMillimetres = Result.Spread?.Millimetres,
        EndPlayMillimetres = Result.EndPlay?.Millimetres,
        EndPlayU95Millimetres = Result.EndPlayU95?.Millimetres,
    };

    /// <inheritdoc/>
    public override string Advice(CaptureSoFar soFar) => EndPlayAdvice.For(Result, Now, soFar);

    /// <inheritdoc/>
    /// <remarks>The last stop is held as long as the others before it is called enough.</remarks>
    public override bool IsEnough(double wanted) => base.IsEnough(wanted) && !Now.IsShort;

    private static RecordWarning InWords(EndPlayWarning warning) => new(EndPlayWarningText.Code(warning), EndPlayWarningText.Sentence(warning));
}
