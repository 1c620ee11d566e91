using System.Globalization;
using Handspun.Capture.Bays;
using Handspun.Capture.Methods;
using Handspun.Jobs.Cautions;
using Handspun.Jobs.Entries;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Metrology.Decision;
using Handspun.Pages;
using Handspun.Setups;

namespace Handspun.Http;

/// <summary>Jobs as the pages show them.</summary>
internal static class ViewsOfJobs
{
    /// <summary>The list.</summary>
    public static JobListView List(IReadOnlyList<Job> jobs) => new([.. jobs.Select(job => new JobListItem(
        job.Number,
        job.Number,
        job.Title,
        job.Bike.Title,
        Odometer(job) ?? "",
        Day(job.OpenedAt),
        [.. job.InOrder.Select(point => new PointState(point.Title, point.Counting is not null, VerdictOf(point.Counting?.Verdict)))]))]);

    /// <summary>One job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="inBay">What the bay measures.</param>
    /// <param name="gauges">The station's gauges.</param>
    /// <param name="unit">The unit of lengths.</param>
    public static JobView Job(Job job, IReadOnlyList<BayTask> inBay, IReadOnlyList<string> gauges, LengthUnit unit) => new()
    {
        Id = job.Number,
        Number = job.Number,
        Title = job.Title,
        Bike = job.Bike.Title,
        Facts = [.. Facts(("Odometer", Odometer(job)), ("VIN", job.Bike.Vin), ("Customer", job.Customer), ("Opened", Day(job.OpenedAt)))],
        Cautions = RunoutCautions.Sentences,
        CautionsRead = job.CautionsReadAt is not null,
        Gauges = gauges,
        Points = [.. job.InOrder.Select(point => Point(point, inBay.FirstOrDefault(task => task.Job == job.Number && task.Point == point.Code)?.Gauge.ToString(), unit))],
        Crank = ViewOfCrank.Of(job, unit),
        MorePoints = [.. PointCalls.Offered.Where(point => !job.Points.Exists(taken => taken.Code == point.Code)).Select(point => new Choice(point.Code, point.Title))],
    };

    private static PointView Point(JobPoint point, string? gaugeInBay, LengthUnit unit) => new()
    {
        Id = point.Code,
        Title = point.Title,
        How = PointCatalogue.Find(point.Code)?.How,
        Cautions = PointCatalogue.Find(point.Code)?.Cautions ?? [],
        Setup = SetupOf(point, unit),
        Limit = point.Limit is { } limit ? new LimitView(LimitSentence.Bounds(limit, unit), limit.Source, limit.Confirmed, limit.ConfirmedBy) : null,
        Records = [.. point.NewestFirst.Select(record => Record(record, point.Counting, unit))],
        GaugeInBay = gaugeInBay,
        ForBay = CaptureMethods.Find(point.Kind) is not null,
        TypeText = EntryReading.Ways(point.Code, point.Kind).Count == 0 ? null
            : CaptureMethods.Find(point.Kind) is null ? "Type what the tool shows" : "Read by eye: type it",
    };

    private static SetupView? SetupOf(JobPoint point, LengthUnit unit) => SetupSheets.Find(point.Kind) is not { } sheet ? null : new(
        sheet.Title,
        sheet.Tell(point.Setup, unit),
        point.Setup is not null,
        [.. sheet.Fields(point.Setup, unit).Select(field => new SetupFieldView(
            field.Name, field.Label, field.Value, field.Hint, field.Choices?.Select(choice => new Choice(choice.Code, choice.Words)).ToList()))]);

    private static RecordView Record(CaptureRecord record, CaptureRecord? counting, LengthUnit unit)
    {
        var figures = record.Figures;
        var (result, uncertainty) = (figures.Value, figures.ValueU95);
        return new RecordView
        {
            Id = record.Id,
            Gauge = record.Gauge.Name,
            At = record.At.ToLocalTime().ToString("d MMM yyyy, HH:mm", CultureInfo.InvariantCulture),
            Result = result is { } value ? LengthText.Of(value, unit) : null,
            Uncertainty = uncertainty is { } doubt ? LengthText.Uncertainty(doubt, unit) : null,
            Verdict = VerdictOf(record.Verdict),
            Sentence = RecordSentence.Of(record, unit),
            Warnings = [.. record.Warnings.Select(warning => warning.Sentence)],
            Facts = [.. figures.ToShow(unit).Select(figure => new Fact(figure.Label, figure.Text)), new Fact("Gauge", record.Gauge.Name)],
            HasPicture = record.HasFiles,
            Counts = counting?.Id == record.Id,
            MayCount = record.Status == RecordStatus.Complete && record.Ending != CaptureEnding.WorkedOut && counting?.Id != record.Id,
            Scale = (result, uncertainty, record.Limit) is ({ } drawn, { } about, { } limit)
                ? LimitScale.For(drawn, about, limit.Tolerance.Lower, limit.Tolerance.Upper)
                : null,
        };
    }

    private static IEnumerable<Fact> Facts(params IEnumerable<(string Label, string? Value)> facts) =>
        facts.Where(fact => fact.Value is not null).Select(fact => new Fact(fact.Label, fact.Value!));

    private static string? Odometer(Job job) => job.Bike.Odometer is { } shown
        ? shown.ToString("#,0", CultureInfo.InvariantCulture).Replace(',', '\u202f')
        : null;

    private static string Day(DateTimeOffset at) => at.ToLocalTime().ToString("d MMM yyyy", CultureInfo.InvariantCulture);

    private static VerdictView VerdictOf(Verdict? verdict) => verdict switch
    {
        Verdict.Within => VerdictView.Within,
        Verdict.Over => VerdictView.Over,
        Verdict.Undecided => VerdictView.Undecided,
        _ => VerdictView.None,
    };
}
