using Handspun.Jobs.Orders;
using Handspun.Jobs.Points;
using Handspun.Jobs.Points.Catalogue;
using Handspun.Jobs.Records;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.ShaftLine;

namespace Handspun.Jobs.Cranks;

/// <summary>What the runouts that count at both ends of a job's crank say together.</summary>
/// <param name="Lines">The shaft lines; null where they cannot be worked out.</param>
/// <param name="Reason">Why they, or their directions, are not known, and what to do, in one sentence; null where all is known.</param>
public sealed record CrankAnswer(ShaftLineResult? Lines, string? Reason)
{
    /// <summary>The answer of a job; null where the job does not take both ends.</summary>
    public static CrankAnswer? Of(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        var (drive, pinion) = (Find(job, RunoutPoints.DriveSide), Find(job, RunoutPoints.Pinion));
        if (drive is null || pinion is null)
        {
            return null;
        }

        return (EndOf(drive), EndOf(pinion)) switch
        {
            ({ } driveEnd, { } pinionEnd) => Together(job.Crank, drive.Setup, driveEnd, pinion.Setup, pinionEnd),
            _ when drive.Counting is null && pinion.Counting is null => new(null, "Measure the runout of both shaft ends, each from the same mark."),
            (null, _) => new(null, Missing(drive, "drive side", "pinion side")),
            _ => new(null, Missing(pinion, "pinion side", "drive side")),
        };
    }

    private static string Missing(JobPoint point, string side, string other) => point.Counting is null
        ? $"The {side} is still to be measured, from the same mark as the {other}."
        : $"The {side}'s record was made before the direction of the runout was kept: measure it again, from the same mark as the {other}.";

    private static CrankAnswer Together(CrankSheet? sheet, PointSetup? driveSetup, MeasuredEnd drive, PointSetup? pinionSetup, MeasuredEnd pinion)
    {
        if (sheet is null || PlaceOf(driveSetup) is not { } drivePlace || PlaceOf(pinionSetup) is not { } pinionPlace)
        {
            return new(null, "Type where the indicators stood and how far the bearings are apart.");
        }

        var lines = BothEnds.Of(drive, pinion, new CrankGeometry(
            drivePlace,
            pinionPlace,
            Read(sheet.BetweenBearingsMillimetres, sheet.DivisionMillimetres),
            sheet.CrankpinDegrees is { } crankpin ? Angle.FromDegrees(crankpin) : null,
            sheet.CrankpinDivisionDegrees));
        return new(lines, lines.Missing ?? BothEnds.Doubt(drive, pinion)
            ?? (sheet.CrankpinDegrees is null ? "Where the crankpin stands was not noted, so nothing is said about it." : null));
    }

    private static ReadLength? PlaceOf(PointSetup? setup) => setup is RunoutSetup { FromBearingMillimetres: { } distance, DivisionMillimetres: { } division } ? Read(distance, division) : null;

    private static ReadLength Read(double millimetres, double division) => new(Length.FromMillimetres(millimetres), Length.FromMillimetres(division));

    private static JobPoint? Find(Job job, MeasuringPoint point) => job.Points.Find(candidate => candidate.Code == point.Code);

    private static MeasuredEnd? EndOf(JobPoint point) => (point.Counting?.Figures as RunoutFigures)?.ToEnd();
}
