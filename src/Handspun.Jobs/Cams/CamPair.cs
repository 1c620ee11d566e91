using Handspun.Jobs.Orders;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Jobs.WorkedOut;

namespace Handspun.Jobs.Cams;

/// <summary>Intake and exhaust lobe of one cylinder, as points of the catalogue.</summary>
public sealed record CamPair : WorkedOutPoint
{
    private CamPair(MeasuringPoint point)
    {
        var cylinder = point.Code.Split('-')[^1];
        (Point, Intake, Exhaust) = (point, $"cam-lift-{cylinder}-intake", $"cam-lift-{cylinder}-exhaust");
    }

    /// <summary>Both cylinders.</summary>
    public static new IReadOnlyList<CamPair> All { get; } = [.. PointCatalogue.All.Where(point => point.Kind == PointKind.CamTiming).Select(point => new CamPair(point))];

    /// <inheritdoc/>
    public override MeasuringPoint Point { get; }

    /// <summary>The intake's point.</summary>
    public string Intake { get; }

    /// <summary>The exhaust's point.</summary>
    public string Exhaust { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<string> Of => [Intake, Exhaust];

    /// <inheritdoc/>
    public override CaptureRecord? Due(Job job, TimeProvider time)
    {
        var (intake, exhaust, point) = (Counting(job, Intake), Counting(job, Exhaust), In(job));
        if (intake?.Figures is not LiftFigures into || exhaust?.Figures is not LiftFigures outOf)
        {
            return null;
        }

        var card = point?.Setup as CamCardSetup;
        var same = point?.NewestFirst.FirstOrDefault() is { Figures: TimingFigures last } && last.IntakeRecord == intake.Id && last.ExhaustRecord == exhaust.Id && last.Card == card;
        return same ? null : TimingRecord.Of(new(intake.Id, into), new(exhaust.Id, outOf), card, time);
    }
}
