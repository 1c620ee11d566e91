using Handspun.Jobs.Bores;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Metrology.Bore;
using Handspun.Metrology.Decision;
using Handspun.Metrology.Quantities;

namespace Handspun.Wire;

/// <summary>What the records of a bore say together. What is not known is null.</summary>
internal sealed record BoreMessage
{
    public required string Point { get; init; }

    /// <summary>Whether lengths are sizes; where not, they are deviations from the gauge's zero.</summary>
    public bool HasSize { get; init; }

    public double? MeanMm { get; init; }

    public double? MeanU95Mm { get; init; }

    public double? SmallestMm { get; init; }

    public double? LargestMm { get; init; }

    /// <summary>Deepest less shallowest; above zero where the bore widens downward.</summary>
    public double? TaperMm { get; init; }

    public double? TaperU95Mm { get; init; }

    public double? OutOfRoundMm { get; init; }

    public double? OutOfRoundU95Mm { get; init; }

    /// <summary>What the smallest and the largest place say against the limit, the worse of the two.</summary>
    public string? Verdict { get; init; }

    public required string Sentence { get; init; }

    public required IReadOnlyList<BorePlaceMessage> Places { get; init; }

    /// <summary>Records with a result that were left out: of another setting, or of a place that was not said.</summary>
    public int LeftOut { get; init; }

    public static BoreMessage Of(JobPoint point)
    {
        if (BoreAnswer.Of(point) is not { } answer)
        {
            return new() { Point = point.Code, Sentence = "No record names its place yet: type the depth and the clock position before each capture.", Places = [] };
        }

        var form = answer.Form;
        return new()
        {
            Point = point.Code,
            HasSize = answer.HasSize,
            MeanMm = Rounded(form.Size),
            MeanU95Mm = Rounded(form.SizeU95),
            SmallestMm = Rounded(form.Smallest.Size),
            LargestMm = Rounded(form.Largest.Size),
            TaperMm = Rounded(form.Taper),
            TaperU95Mm = Rounded(form.TaperU95),
            OutOfRoundMm = Rounded(form.OutOfRound),
            OutOfRoundU95Mm = Rounded(form.OutOfRoundU95),
            Verdict = answer.Verdict is { } verdict ? VerdictCode.Of(verdict) : null,
            Sentence = answer.Sentence,
            Places = [.. answer.Places.Select(at => BorePlaceMessage.Of(at.Place, at.Record))],
            LeftOut = answer.LeftOut,
        };
    }

    private static double? Rounded(Length? length) => length is { } known ? Math.Round(known.Millimetres, 6) : null;
}

/// <summary>One place of a bore.</summary>
internal sealed record BorePlaceMessage(string Record, double DepthMm, double ClockHours, double ValueMm, double OwnU95Mm)
{
    public static BorePlaceMessage Of(BorePlace place, CaptureRecord record) => new(
        record.Id, place.Depth.Millimetres, BoreAnswer.ClockOf(place), Math.Round(place.Size.Millimetres, 6), Math.Round(place.OwnU95.Millimetres, 6));
}
