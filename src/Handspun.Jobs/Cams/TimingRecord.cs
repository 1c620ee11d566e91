using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Metrology.Decision;
using Handspun.Metrology.Lift;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Cams;

/// <summary>Makes the record of what two lobes do together.</summary>
public static class TimingRecord
{
    /// <summary>The record; incomplete, with the reason, where the two make no pair.</summary>
    /// <param name="intake">The intake lobe.</param>
    /// <param name="exhaust">The exhaust lobe.</param>
    /// <param name="card">What the cam's card says; null where nobody typed it.</param>
    /// <param name="time">The wall clock.</param>
    public static CaptureRecord Of(RecordedLobe intake, RecordedLobe exhaust, CamCardSetup? card, TimeProvider time)
    {
        var (into, outOf) = (intake.Figures.ToResult(), exhaust.Figures.ToResult());
        var figures = new TimingFigures { IntakeRecord = intake.Record, ExhaustRecord = exhaust.Record, Card = card };
        var missing = LobePair.Fault(into, outOf);
        var cardFault = missing is null && card is not null ? CardComparison.Fault(card.ToCard(), into, outOf) : null;
        if (missing is null)
        {
            var top = intake.Figures.Top ?? exhaust.Figures.Top;
            figures = Filled(figures, LobePair.Of(into, outOf, top)) with
            {
                Lines = card is null || cardFault is not null ? [] : [.. CardComparison.Of(card.ToCard(), into, outOf, top, CrankAngle.FromDegrees(card.AllowedDegrees)).Select(Kept)],
            };
        }

        return new CaptureRecord
        {
            Id = RecordName.New(time),
            At = time.GetUtcNow(),
            Seconds = 0,
            Ending = CaptureEnding.WorkedOut,
            Status = missing is null ? RecordStatus.Complete : RecordStatus.Incomplete,
            Missing = missing,
            Gauge = new RecordGauge { Name = "both lift curves", Profile = "worked-out", Port = "" },
            Figures = figures,
            Verdict = Judged(figures.Lines),
            Warnings = [.. Warnings(figures, cardFault)],
        };
    }

    private static Verdict? Judged(IReadOnlyList<TimingLine> lines) =>
        lines.Count == 0 ? null
        : lines.Any(line => line.Verdict == VerdictCode.Of(Verdict.Over)) ? Verdict.Over
        : lines.Any(line => line.Verdict == VerdictCode.Of(Verdict.Undecided)) ? Verdict.Undecided
        : Verdict.Within;

    private static IEnumerable<RecordWarning> Warnings(TimingFigures figures, string? cardFault)
    {
        if (cardFault is not null)
        {
            yield return new("card-not-comparable", cardFault);
        }

        if (figures.SeparationCamDegrees is not null && figures.IntakeOpensDegrees is null)
        {
            yield return new("no-top-dead-centre", "Where top dead centre is was not given, so only what needs none is known: find it with both stops and take the lift curves again.");
        }
    }

    private static TimingFigures Filled(TimingFigures figures, LobePair pair) => figures with
    {
        CheckingLiftMillimetres = pair.CheckingLift.Millimetres,
        SeparationCamDegrees = pair.Separation.Value.Degrees,
        SeparationCamU95Degrees = pair.Separation.U95.Degrees,
        OverlapDegrees = pair.Overlap.Value.Degrees,
        OverlapU95Degrees = pair.Overlap.U95.Degrees,
        IntakeOpensDegrees = pair.IntakeOpens?.Value.Degrees,
        IntakeOpensU95Degrees = pair.IntakeOpens?.U95.Degrees,
        IntakeClosesDegrees = pair.IntakeCloses?.Value.Degrees,
        IntakeClosesU95Degrees = pair.IntakeCloses?.U95.Degrees,
        ExhaustOpensDegrees = pair.ExhaustOpens?.Value.Degrees,
        ExhaustOpensU95Degrees = pair.ExhaustOpens?.U95.Degrees,
        ExhaustClosesDegrees = pair.ExhaustCloses?.Value.Degrees,
        ExhaustClosesU95Degrees = pair.ExhaustCloses?.U95.Degrees,
        IntakeCentrelineDegrees = pair.IntakeCentreline?.Value.Degrees,
        IntakeCentrelineU95Degrees = pair.IntakeCentreline?.U95.Degrees,
        ExhaustCentrelineDegrees = pair.ExhaustCentreline?.Value.Degrees,
        ExhaustCentrelineU95Degrees = pair.ExhaustCentreline?.U95.Degrees,
    };

    private static TimingLine Kept(CardDifference line) => new()
    {
        What = line.What,
        Of = line.OfCam ? "cam" : "crank",
        CardDegrees = line.CardDegrees,
        MeasuredDegrees = line.MeasuredDegrees,
        MeasuredU95Degrees = line.U95Degrees,
        Verdict = VerdictCode.Of(line.Verdict),
        Sentence = line.Sentence,
    };
}

/// <summary>A lobe with the record that it is from.</summary>
/// <param name="Record">The record's name.</param>
/// <param name="Figures">What was found.</param>
public readonly record struct RecordedLobe(string Record, LiftFigures Figures);
