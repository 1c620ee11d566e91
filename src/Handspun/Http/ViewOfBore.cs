using System.Globalization;
using Handspun.Jobs.Bores;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Points;
using Handspun.Pages;

namespace Handspun.Http;

/// <summary>A bore's places as the job's page shows them.</summary>
internal static class ViewOfBore
{
    /// <summary>What the records say together; null where the point is no bore or no record names its place.</summary>
    public static BoreView? Of(JobPoint point, LengthUnit unit)
    {
        if (point.Kind != PointKind.Bore || BoreAnswer.Of(point) is not { } answer)
        {
            return null;
        }

        double[] clocks = [.. answer.Places.Select(at => BoreAnswer.ClockOf(at.Place)).Distinct().OrderBy(clock => clock % 12)];
        return new(
            answer.Sentence,
            ViewsOfJobs.VerdictOf(answer.Verdict),
            answer.HasSize,
            [.. answer.ToShow(unit).Select(figure => new Fact(figure.Label, figure.Text))],
            [.. clocks.Select(clock => clock.ToString("0.##", CultureInfo.InvariantCulture))],
            [.. answer.Places.GroupBy(at => at.Place.Depth).Select(depth => new BoreRow(
                BorePlaces.Depth(depth.Key.Millimetres, unit),
                [.. clocks.Select(clock => depth.Where(at => BoreAnswer.ClockOf(at.Place) == clock).Select(at => LengthText.Number(at.Place.Size, unit)).FirstOrDefault(""))]))],
            LengthText.Symbol(unit));
    }
}
