using Handspun.Jobs.Cranks;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Points;
using Handspun.Jobs.Points.Catalogue;
using Handspun.Metrology.ShaftLine;

namespace Handspun.Wire;

/// <summary>A job's crank: what was typed of it, and what both of its ends say together.</summary>
internal sealed record CrankMessage
{
    public double? DriveSideFromBearingMm { get; init; }

    public double? PinionSideFromBearingMm { get; init; }

    public double? BetweenBearingsMm { get; init; }

    public double? DivisionMm { get; init; }

    public double? CrankpinDeg { get; init; }

    public double? CrankpinDivisionDeg { get; init; }

    /// <summary>What was found, in words; null where nothing can be said.</summary>
    public string? Sentence { get; init; }

    /// <summary>Why nothing, or no direction, can be said, and what to do; null where all is known.</summary>
    public string? Reason { get; init; }

    /// <summary>The angle between the two lines: so many millimetres sideways in a metre along.</summary>
    public double? KinkMmPerM { get; init; }

    public double? KinkU95MmPerM { get; init; }

    public double? KinkTowardDeg { get; init; }

    public double? OffsetMm { get; init; }

    public double? OffsetU95Mm { get; init; }

    public double? OffsetTowardDeg { get; init; }

    public required IReadOnlyList<FigureMessage> Figures { get; init; }

    public required IReadOnlyList<string> Assumptions { get; init; }

    public required string Caution { get; init; }

    public static CrankMessage Of(Job job, LengthUnit unit)
    {
        var answer = CrankAnswer.Of(job);
        var apart = answer?.Lines?.Apart;
        return new()
        {
            DriveSideFromBearingMm = FromBearing(job, RunoutPoints.DriveSide),
            PinionSideFromBearingMm = FromBearing(job, RunoutPoints.Pinion),
            BetweenBearingsMm = job.Crank?.BetweenBearingsMillimetres,
            DivisionMm = job.Crank?.DivisionMillimetres,
            CrankpinDeg = job.Crank?.CrankpinDegrees,
            CrankpinDivisionDeg = job.Crank?.CrankpinDivisionDegrees,
            Sentence = answer?.Lines?.Sentence,
            Reason = answer is null ? "The job does not take the runout of both shaft ends: add the one that is missing." : answer.Reason,
            KinkMmPerM = Rounded(1000 * apart?.Kink.Ratio),
            KinkU95MmPerM = Rounded(1000 * apart?.KinkU95.Ratio),
            KinkTowardDeg = Rounded(apart?.KinkToward?.Degrees),
            OffsetMm = Rounded(apart?.Offset.Millimetres),
            OffsetU95Mm = Rounded(apart?.OffsetU95.Millimetres),
            OffsetTowardDeg = Rounded(apart?.OffsetToward?.Degrees),
            Figures = answer?.Lines is { } lines ? [.. CrankFigures.Of(lines, unit).Select(figure => new FigureMessage(figure.Label, figure.Text))] : [],
            Assumptions = ShaftLineMethod.Assumptions,
            Caution = ShaftLineMethod.Caution,
        };
    }

    private static double? FromBearing(Job job, MeasuringPoint end) => (job.Points.Find(point => point.Code == end.Code)?.Setup as RunoutSetup)?.FromBearingMillimetres;

    private static double? Rounded(double? value) => value is { } number ? Math.Round(number, 6) : null;
}

/// <summary>One figure in words.</summary>
internal sealed record FigureMessage(string Label, string Text);
