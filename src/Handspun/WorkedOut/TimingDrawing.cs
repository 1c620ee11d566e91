using System.Globalization;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Records;
using Handspun.Metrology.Quantities;
using Handspun.Pictures.Lift;
using Handspun.Pictures.Page;

namespace Handspun.WorkedOut;

/// <summary>The picture of a cam's timing, out of the two lift records that it rests on.</summary>
internal static class TimingDrawing
{
    /// <summary>The picture; null where the record is of something else, or has no result.</summary>
    public static Picture? Of(Job job, string title, CaptureRecord record, LengthUnit unit)
    {
        if (record.Figures is not TimingFigures { SeparationCamDegrees: { } separation } timing
            || Find(job, timing.IntakeRecord) is not { CurveMillimetres: { } intake } into
            || Find(job, timing.ExhaustRecord) is not { CurveMillimetres: { } exhaust } outOf)
        {
            return null;
        }

        // Both centrelines from top dead centre where it is known, else as far to either side of the middle between them.
        var (fromTop, half) = (timing.IntakeCentrelineDegrees is not null, separation);
        var card = timing.Card;
        return TimingPicture.Draw(new TimingPictureContent
        {
            Title = $"{title}, {job.Bike.Title}",
            Subtitle = string.Create(CultureInfo.InvariantCulture, $"Job {job.Number}, {record.At.ToLocalTime():d MMM yyyy, HH:mm}"),
            Separation = $"Lobes {timing.InFigures(unit)!.Value} ± {timing.InFigures(unit)!.U95} apart",
            Sentence = timing.InWords(unit)!,
            Intake = LobeOf("intake", into, intake, timing.IntakeCentrelineDegrees ?? half) with
            {
                Card = fromTop ? new(-card?.IntakeOpensDegrees, 180 + card?.IntakeClosesDegrees, card?.IntakeCentrelineDegrees) : default,
            },
            Exhaust = LobeOf("exhaust", outOf, exhaust, -(timing.ExhaustCentrelineDegrees ?? half)) with
            {
                Card = fromTop ? new(-180 - card?.ExhaustOpensDegrees, card?.ExhaustClosesDegrees, -card?.ExhaustCentrelineDegrees) : default,
            },
            FromTop = fromTop,
            CheckingLift = Length.FromMillimetres(timing.CheckingLiftMillimetres),
            Verdict = record.Verdict,
            Unit = unit,
        });
    }

    private static Lobe LobeOf(string name, LiftFigures figures, IReadOnlyList<double> curve, double centreAt)
    {
        var centre = figures.CentrelineCrankDegrees!.Value;
        return new(
            name, curve, CrankAngle.FromDegrees(centre).AtCam(), centreAt,
            centreAt + figures.OpeningCrankDegrees!.Value - centre, centreAt + figures.ClosingCrankDegrees!.Value - centre);
    }

    private static LiftFigures? Find(Job job, string record) =>
        job.Points.SelectMany(point => point.Records).FirstOrDefault(found => found.Id == record)?.Figures as LiftFigures;
}
