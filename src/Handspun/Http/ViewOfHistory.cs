using System.Globalization;
using Handspun.Http.Comparing;
using Handspun.Jobs.History;
using Handspun.Jobs.Lengths;
using Handspun.Pages;

namespace Handspun.Http;

/// <summary>A bike's history as its page shows it.</summary>
internal static class ViewOfHistory
{
    /// <summary>That of the bike of a job.</summary>
    public static HistoryView Of(string job, BikeHistory history, IReadOnlyDictionary<string, KindSpread> kind, LengthUnit unit) => new(
        job,
        history.Bike.Title,
        history.Bike.Vin is null && history.Bike.Plate is null ? "Only this job is known: with a VIN or a plate, the bike's jobs come together here." : null,
        [.. history.Jobs.Reverse().Select(one => new PastJobView(one.Number, one.Title, Day(one.OpenedAt)))],
        [.. history.Points.Select(point => new PointHistoryView(
            point.Code,
            point.Title,
            [.. point.Results.Reverse().Select(result => new PastResultView(
                result.Job,
                Day(result.Verdict.Record!.At),
                LengthText.WithUncertainty(result.Verdict.Record.Figures.Value!.Value, result.Verdict.Record.Figures.ValueU95!.Value, unit),
                ViewsOfJobs.VerdictOf(result.Verdict.Verdict),
                result.Verdict.OnUnconfirmedLimit))],
            point.Results is [.., { } before, { } newest] ? CompareCalls.Address(before.Verdict.Record!.Id, newest.Verdict.Record!.Id) : "",
            kind.TryGetValue(point.Code, out var spread) ? SpreadSentence.Of(spread, unit) : null))]);

    private static string Day(DateTimeOffset at) => at.ToLocalTime().ToString("d MMM yyyy", CultureInfo.InvariantCulture);
}
