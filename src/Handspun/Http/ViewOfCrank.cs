using System.Globalization;
using Handspun.Jobs.Cranks;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Points;
using Handspun.Jobs.Points.Catalogue;
using Handspun.Metrology.ShaftLine;
using Handspun.Pages;

namespace Handspun.Http;

/// <summary>A job's crank as its page shows it.</summary>
internal static class ViewOfCrank
{
    /// <summary>What both ends say together; null where the job does not take both.</summary>
    public static CrankView? Of(Job job, LengthUnit unit) => CrankAnswer.Of(job) is not { } answer ? null : new CrankView
    {
        Sentence = answer.Lines is { Status: ShaftLineStatus.Measured } ? answer.Lines.Sentence : null,
        Reason = answer.Reason,
        Caution = ShaftLineMethod.Caution,
        Figures = answer.Lines is { } lines ? [.. CrankFigures.Of(lines, unit).Select(figure => new Fact(figure.Label, figure.Text))] : [],
        Assumptions = ShaftLineMethod.Assumptions,
        Fields =
        [
            new("drive_side_from_bearing", "Plunger to bearing, drive side", LengthText.AsTyped(FromBearing(job, RunoutPoints.DriveSide), unit)),
            new("pinion_side_from_bearing", "Plunger to bearing, pinion side", LengthText.AsTyped(FromBearing(job, RunoutPoints.Pinion), unit)),
            new("between_bearings", "Between the bearings", LengthText.AsTyped(job.Crank?.BetweenBearingsMillimetres, unit)),
            new("division", "Division of the rule", LengthText.AsTyped(job.Crank?.DivisionMillimetres, unit)),
            new("crankpin_deg", "Crankpin from the mark, degrees", Typed(job.Crank?.CrankpinDegrees), Required: false),
            new("crankpin_division_deg", "Division of the degree wheel", Typed(job.Crank is { CrankpinDegrees: not null } crank ? crank.CrankpinDivisionDegrees : null), Required: false),
        ],
    };

    private static double? FromBearing(Job job, MeasuringPoint end) => (job.Points.Find(point => point.Code == end.Code)?.Setup as RunoutSetup)?.FromBearingMillimetres;

    private static string Typed(double? degrees) => degrees?.ToString("0.##", CultureInfo.InvariantCulture) ?? "";
}
