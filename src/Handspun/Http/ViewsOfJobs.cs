using System.Globalization;
using Handspun.Capture.Methods;
using Handspun.Http.Plans;
using Handspun.Jobs.Book;
using Handspun.Jobs.Book.Acts;
using Handspun.Jobs.Cautions;
using Handspun.Jobs.Entries;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Jobs.ShopGauges;
using Handspun.Jobs.Standing;
using Handspun.Jobs.Store;
using Handspun.Jobs.Store.Finding;
using Handspun.Metrology.Decision;
using Handspun.Pages;
using Handspun.Pages.Plans;
using Handspun.Setups;

namespace Handspun.Http;

/// <summary>Jobs as the pages show them.</summary>
internal static class ViewsOfJobs
{
    /// <summary>A page of the list; <see cref="JobStore.ListAsync"/> reads what it shows.</summary>
    public static JobListView List(FoundJobs found) => new([.. found.Jobs.Select(job => new JobListItem(
        job.Number,
        job.Number,
        job.Title,
        job.Bike.Title,
        Odometer(job) ?? "",
        Day(job.OpenedAt),
        [.. job.InOrder.Where(point => job.Plan is null || point.Counting is not null).Select(State)],
        ViewsOfPlans.Summary(job),
        JobStanding.Of(job).Stop is not null))],
        found.Search.Typed?.Trim() ?? "",
        found.Count,
        found.Search.Page > 1 ? JobPageAddress.Of("/", found.Search with { Page = Math.Min(found.Search.Page - 1, found.Pages) }) : null,
        found.Search.Page < found.Pages ? JobPageAddress.Of("/", found.Search with { Page = found.Search.Page + 1 }) : null);

    /// <summary>One job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="shown">What the bay measures, the gauges, and the unit.</param>
    /// <param name="form">What was typed and what is wrong; null where nobody sent anything.</param>
    public static JobView Job(Job job, Showing shown, FormState? form = null) => new()
    {
        Id = job.Number,
        Number = job.Number,
        Title = job.Title,
        Bike = job.Bike.Title,
        Facts = [.. Facts(("Odometer", Odometer(job)), ("VIN", job.Bike.Vin), ("Plate", job.Bike.Plate), ("Customer", job.Customer), ("Opened", Day(job.OpenedAt)))],
        Cautions = RunoutCautions.Sentences,
        CautionsRead = job.CautionsReadAt is not null,
        Gauges = shown.Gauges,
        Points = [.. job.InOrder.Select(point => Point(job, point, shown))],
        Crank = ViewOfCrank.Of(job, shown.Unit),
        MorePoints = [.. PointCalls.Offered.Where(point => !job.Points.Exists(taken => taken.Code == point.Code)).Select(point => new Choice(point.Code, point.Title))],
        Plan = ViewsOfPlans.Of(job, shown.Unit),
        Findings = [.. JobFindings.Of(job).Reverse().Select(finding => ViewsOfFindings.Of(job, finding))],
        Parts = ViewsOfFindings.Parts(job),
        Close = new(
            job.Number,
            job.ClosedAt is { } at ? ViewsOfPlans.At(at) : null,
            job.Book.LastOrDefault(entry => entry.Deed is JobClosed) is { } closed ? ViewsOfPlans.Signed(closed) : null,
            [.. JobActs.Left(job).Select(left => left.Title)],
            job.Version,
            form ?? FormState.Empty),
    };

    /// <summary>One point of a job.</summary>
    public static PointView Point(Job job, JobPoint point, Showing shown) => new()
    {
        Id = point.Code,
        Title = point.Title,
        How = PointCatalogue.Find(point.Code)?.How,
        Cautions = PointCatalogue.Find(point.Code)?.Cautions ?? [],
        Setup = SetupOf(point, shown.Unit),
        Bore = ViewOfBore.Of(point, shown.Unit),
        Limit = LimitPages.View(point.Limit, shown.Unit),
        Records = [.. point.NewestFirst.Select(record => Record(record, point, shown.Unit))],
        GaugeInBay = shown.InBay.FirstOrDefault(task => task.Job == job.Number && task.Point == point.Code)?.Gauge.ToString(),
        TakesLimit = point.Kind != PointKind.CamTiming,
        ForBay = CaptureMethods.Find(point.Kind) is not null,
        TypeText = EntryReading.Ways(point.Code, point.Kind).Count == 0 ? null
            : CaptureMethods.Find(point.Kind) is null ? "Type what the tool shows" : "Read by eye: type it",
        IsInPlan = job.Plan?.Steps.Any(step => step.Point == point.Code) == true,
        WaitsFor = PointHold.Of(job, point),
    };

    private static PointState State(JobPoint point)
    {
        var verdict = StandingVerdict.Of(point);
        return new(point.Title, verdict.Record is not null, VerdictOf(verdict.Verdict), verdict.OnUnconfirmedLimit);
    }

    private static SetupView? SetupOf(JobPoint point, LengthUnit unit) => SetupSheets.Find(point.Kind) is not { } sheet ? null : new(
        sheet.Title,
        sheet.Tell(point.Setup, unit),
        point.Setup is not null,
        [.. sheet.Fields(point.Setup, unit).Select(field => new SetupFieldView(
            field.Name, field.Label, field.Value, field.Hint, field.Choices?.Select(choice => new Choice(choice.Code, choice.Words)).ToList()))]);

    /// <summary>One record of a point.</summary>
    public static RecordView Record(CaptureRecord record, JobPoint point, LengthUnit unit)
    {
        var counting = point.Counting;
        var figures = record.Figures;
        var (result, uncertainty) = (figures.Value, figures.ValueU95);
        return new RecordView
        {
            Id = record.Id,
            Gauge = record.Gauge.Name,
            At = record.At.ToLocalTime().ToString("d MMM yyyy, HH:mm", CultureInfo.InvariantCulture),
            Result = figures.InFigures(unit)?.Value,
            Uncertainty = figures.InFigures(unit)?.U95,
            Verdict = VerdictOf(record.Verdict),
            VerdictText = figures is TimingFigures ? AgainstCard(record) : null,
            Sentence = RecordSentence.Of(record, unit),
            Warnings = LimitSince.Warnings(record, point.Limit, unit),
            Facts = [.. figures.ToShow(unit).Select(figure => new Fact(figure.Label, figure.Text)), new Fact("Gauge", GaugeWords.OnRecord(record))],
            HasPicture = record.HasFiles || record.Figures is TimingFigures { SeparationCamDegrees: not null },
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

    private static string AgainstCard(CaptureRecord record) => record.Verdict switch
    {
        Verdict.Within => "As the card says",
        Verdict.Over => "Not as the card says",
        Verdict.Undecided => "Too close to call",
        _ => record.Status == RecordStatus.Complete ? "No card to lay it beside" : "No result",
    };

    /// <summary>A verdict.</summary>
    public static VerdictView VerdictOf(Verdict? verdict) => verdict switch
    {
        Verdict.Within => VerdictView.Within,
        Verdict.Over => VerdictView.Over,
        Verdict.Undecided => VerdictView.Undecided,
        _ => VerdictView.None,
    };
}
