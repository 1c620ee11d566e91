using Handspun.Filing;
using Handspun.Http.Plans;
using Handspun.Jobs.Comparing;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Records;
using Handspun.Jobs.Store;
using Handspun.Metrology.Quantities;
using Handspun.Pages;
using Handspun.Pages.Comparing;
using Handspun.Station;
using Handspun.Wire;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Handspun.Http.Comparing;

/// <summary>Two records side by side: before and after, left end and right end.</summary>
internal static class CompareCalls
{
    /// <summary>Maps the page. Its address names both records, so that it can be kept and sent.</summary>
    public static void MapComparePage(this IEndpointRouteBuilder routes) => routes.MapGet("/compare", ShowAsync).ExcludeFromDescription();

    /// <summary>Maps the calls.</summary>
    public static void MapComparing(this IEndpointRouteBuilder calls)
    {
        var pair = calls.MapGroup("/records/{record}/beside/{other}");
        pair.MapGet("", async (string record, string other, JobStore store, StationOptions options, CancellationToken cancellation) =>
            DifferenceMessage.Of(await FindAsync(store, record, cancellation), await FindAsync(store, other, cancellation), options.Unit));
        pair.MapGet("/picture.svg", async (string record, string other, JobStore store, PicturesTogether pictures, CancellationToken cancellation) =>
            pictures.Draw(await FindAsync(store, record, cancellation), await FindAsync(store, other, cancellation)) is { } picture
                ? TypedResults.File(picture.ToSvg(), "image/svg+xml")
                : throw new JobNotFoundException("Only two runouts that have their journals are drawn on the same scale: look at each record's own picture."));
    }

    private static async Task<IResult> ShowAsync(string? a, string? b, JobStore store, HistoryStore history, PicturesTogether pictures, StationOptions options, CancellationToken cancellation)
    {
        var first = await FindAsync(store, a ?? "", cancellation);
        if (string.IsNullOrEmpty(b))
        {
            var jobs = (await history.OfBikeAsync(first.Job.Number, cancellation)).Jobs;
            return new RazorComponentResult<ChoosePage>(new { Model = new ChooseView(View("A", first, options), [.. Groups(first, jobs, options)]) });
        }

        var second = await FindAsync(store, b, cancellation);
        var difference = RecordDifference.Of(first.Measured, second.Measured);
        var same = pictures.CanDraw(first.Record, second.Record);
        return new RazorComponentResult<ComparePage>(new
        {
            Model = new CompareView(
                View("A", first, options, second, same),
                View("B", second, options, first, same),
                difference?.InWords(options.Unit, "A", "B") ?? RecordDifference.Reason(first.Measured, second.Measured)!,
                RecordDifference.AnglesReason(first.Record.Figures, second.Record.Figures),
                difference?.IsTold,
                same,
                Address(second, first),
                $"/compare?a={Uri.EscapeDataString(first.Record.Id)}"),
        });
    }

    private static async Task<ComparedRecord> FindAsync(JobStore store, string record, CancellationToken cancellation) =>
        await store.FindRecordAsync(record, cancellation) is var (job, point, found)
            ? new(job, point, found)
            : throw new JobNotFoundException(record.Length == 0 ? "Say which records: open a job and press Compare at one of them." : $"There is no record '{record}': the job's page lists its records.");

    private static IEnumerable<ChooseGroup> Groups(ComparedRecord first, IReadOnlyList<Job> jobs, StationOptions options) => jobs
        .SelectMany(job => job.Points.SelectMany(point => point.NewestFirst.Select(record => new ComparedRecord(job, point, record))))
        .Where(other => other.Record.Status == RecordStatus.Complete && other.Record.Id != first.Record.Id)
        .GroupBy(other => other.Point.Title)
        .OrderByDescending(group => group.Key == first.Point.Title)
        .ThenByDescending(group => group.Any(other => RecordDifference.Reason(first.Measured, other.Measured) is null))
        .Select(group => new ChooseGroup(group.Key, [.. group.OrderByDescending(other => other.Record.At).Select(other => new ChooseLine(
            Address(first, other),
            At(other),
            ViewsOfJobs.Record(other.Record, other.Point, options.Unit) is { Result: { } result } view ? $"{result} ± {view.Uncertainty}" : RecordSentence.Of(other.Record, options.Unit),
            ViewsOfJobs.VerdictOf(other.Record.Verdict)))]));

    private static ComparedView View(string letter, ComparedRecord one, StationOptions options, ComparedRecord? other = null, bool same = false) => new()
    {
        Letter = letter,
        Point = one.Point.Title,
        At = At(one),
        Address = $"/jobs/{one.Job.Number}#{one.Point.Code}",
        Bike = one.Job.Bike.Title,
        Record = ViewsOfJobs.Record(one.Record, one.Point, options.Unit),
        Picture = same ? $"/api/v1/records/{one.Record.Id}/beside/{other!.Record.Id}/picture.svg"
            : one.Record.HasFiles ? $"/api/v1/records/{one.Record.Id}/picture.svg" : null,
        Scale = other is null ? null : Scale(one, other),
    };

    private static LimitScale? Scale(ComparedRecord one, ComparedRecord other) => RecordDifference.Of(one.Measured, other.Measured) is null
        ? null
        : LimitScale.Together(Result(one.Record), Result(other.Record), Bounds(one.Record), Bounds(other.Record));

    private static (Length Value, Length U95) Result(CaptureRecord record) => (record.Figures.Value!.Value, record.Figures.ValueU95!.Value);

    private static (Length? Lower, Length? Upper) Bounds(CaptureRecord record) => (record.Limit?.Tolerance.Lower, record.Limit?.Tolerance.Upper);

    /// <summary>The page with two records side by side.</summary>
    public static string Address(string a, string b) => $"/compare?a={Uri.EscapeDataString(a)}&b={Uri.EscapeDataString(b)}";

    private static string Address(ComparedRecord a, ComparedRecord b) => Address(a.Record.Id, b.Record.Id);

    private static string At(ComparedRecord one) => $"{ViewsOfPlans.At(one.Record.At)}, job {one.Job.Number}";
}
