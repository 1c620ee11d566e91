using Handspun.Jobs.Bikes;
using Handspun.Jobs.Book;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Plans;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Jobs.Reports;
using Handspun.Jobs.ShopGauges;
using Handspun.Metrology.Decision;
using Handspun.Metrology.Quantities;

namespace Handspun.Pictures.Tests.Report;

/// <summary>An invented job in memory with everything that a report can show.</summary>
internal static class ReportedJob
{
    public static DateTimeOffset Start { get; } = new(2026, 3, 14, 9, 26, 53, TimeSpan.Zero);

    public static ReportClock Clock { get; } = new(TimeZoneInfo.Utc, Start.AddDays(1));

    /// <summary>A job with so many points. The first is a gate and over its limit, the second undecided, the third has no limit, the others are within; the last is not measured.</summary>
    public static Job Of(int points, int photos = 3, string customer = "Zoë Ångström-Дубова, Ελένη", bool confirmed = false)
    {
        var job = new Job
        {
            Number = "2026-0042",
            Title = "Cam chest: new tensioners <and> bearings",
            Customer = customer,
            OpenedAt = Start,
            Bike = new Bike { Make = "Aldermoor", Model = "Corvid 1200", Year = 2004, Vin = "ZZ9CORV1204000042", Odometer = 48_210 },
            Crank = new() { BetweenBearingsMillimetres = 152.4, DivisionMillimetres = 0.5 },
            Plan = PlanOf(points),
            Points = [.. Enumerable.Range(0, points).Select(place => Point(place, points, confirmed))],
        };
        job.Write("step/ready", new Ticked("strapped, on both stands"));
        job.Write("step/point-00", new GateDecided(true, "The customer knows, and has the crank rebuilt next winter.", "rec-00", Verdict.Over, "0.0130 in ± 0.0003 in: over the limit (at most 0.0050 in)."));
        job.Write("finding/3", new FindingNoted(["scoring", "wear"], "Grooves that a nail feels, all the way round the rotor.", "feed side", "pump", null));
        for (var photo = 0; photo < photos; photo++)
        {
            job.Write("finding/3", new PhotoAdded($"{photo:x32}.jpg", 1280, 960, 1, "00", photo == 0 ? "Feed rotor, face down" : null));
        }

        job.Write($"finding/{job.Version + 1}", new FindingNoted(["as-it-should-be"], "", "return side", "pump", null));
        job.Write("part/lifter-front-intake", new PartFaced("Oil hole toward the cylinder."));
        job.Write("part/lifter-front-intake", new PartDecided(PartChoice.Keep, "Roller turns freely, no marks."));
        job.Write("part/pump-rotors", new PartDecided(PartChoice.Replace, "Scored on the feed side."));
        job.Write("step/marks", new Skipped("Cams stay in."));
        return job;
    }

    /// <summary>Its report in inches.</summary>
    public static JobReport ReportOf(Job job) => JobReport.Of(job, Jobs.Lengths.LengthUnit.Inch, Clock);

    private static void Write(this Job job, string about, Deed deed) =>
        job.Entries.Add(new BookEntry { Number = ++job.Version, At = Start.AddMinutes(job.Version), By = "A. Nobody", About = about, Deed = deed });

    private static Plan PlanOf(int points) => new()
    {
        Code = "invented",
        Title = "Invented plan",
        Steps =
        [
            new() { Code = "ready", Title = "Machine ready and safe", Kind = StepKind.Check, Cautions = ["The machine is strapped to its lift; nobody works under a raised machine that is not supported.", "The exhaust is cold."] },
            .. Enumerable.Range(0, points).Select(place => new PlanStep { Code = Code(place), Title = Title(place), Kind = StepKind.Point, Point = Code(place), Gate = place == 0 }),
            new() { Code = "pump", Title = "Oil pump", Kind = StepKind.Finding, Places = ["feed side", "return side"] },
            new() { Code = "marks", Title = "Timing marks meet again", Kind = StepKind.Check, Cautions = ["Turn the engine by hand only."] },
            new() { Code = "fasteners", Title = "Fasteners tightened as the manual says", Kind = StepKind.Check, After = ["marks"] },
        ],
        Parts =
        [
            new() { Code = "lifter-front-intake", Title = "Lifter", Place = "front intake", Faces = "Which way did the oil hole face?" },
            new() { Code = "lifter-rear-intake", Title = "Lifter", Place = "rear intake", Faces = "Which way did the oil hole face?" },
            new() { Code = "pump-rotors", Title = "Pump rotors", Place = "feed side" },
        ],
    };

    private static JobPoint Point(int place, int points, bool confirmed)
    {
        Limit? limit = place == 2 ? null : new() { UpperMillimetres = 0.127, Source = confirmed ? "invented manual, page 12" : "common practice, no source", ConfirmedBy = confirmed ? "A. Nobody" : null, Age = LimitAge.Service };
        var tir = place switch { 0 => 0.3302, 1 => 0.126, _ => 0.0508 + 0.0005 * place };
        var point = new JobPoint { Place = place, Code = Code(place), Title = Title(place), Limit = limit, Setup = place == 0 ? new RunoutSetup { FromBearingMillimetres = 20, DivisionMillimetres = 1 } : null };
        if (place == points - 1 && points > 3)
        {
            return point;
        }

        point.Records.Add(new CaptureRecord
        {
            Id = $"rec-{place:00}",
            At = Start.AddMinutes(3 * place),
            Seconds = 13,
            Ending = CaptureEnding.Enough,
            Status = RecordStatus.Complete,
            Gauge = new RecordGauge { Name = "pinion", Profile = "text-line", Port = "/dev/ttyUSB0", ResolutionMillimetres = 0.001, ErrorLimitMillimetres = 0.003, LastCheck = place == 0 ? null : Check },
            Limit = limit is null ? null : limit with { },
            Verdict = limit is null ? null : ConformityRule.Decide(Length.FromMillimetres(tir), Length.FromMillimetres(0.0051), limit.Tolerance).Verdict,
            Figures = new RunoutFigures
            {
                Readings = 420,
                Rejected = 2,
                Turns = 3.3,
                TirMillimetres = tir,
                TirU95Millimetres = 0.0051,
                EccentricityMillimetres = tir / 2.1,
                RoundnessMillimetres = 0.0042,
                ZoneRoundnessMillimetres = 0.0041,
                HighSpotDegrees = 123.4,
                HighSpotU95Degrees = 3.2,
                AngleReference = "index",
                TirByTurnMillimetres = [tir - 0.0004, tir + 0.0006, tir],
            },
            Warnings = place % 4 == 1 ? [RecordWarning.GaugeGap, .. confirmed ? [] : new[] { RecordWarning.LimitUnconfirmed }] : [],
        });
        return point;
    }

    private static LastCheck Check { get; } = new()
    {
        At = Start.AddDays(-9),
        DueOn = new(2026, 9, 5),
        By = "A. Nobody",
        Against = "a gauge block of 1.000 mm",
        ErrorMillimetres = 0.0008,
        ErrorU95Millimetres = 0.0006,
        ErrorLimitMillimetres = 0.003,
        Found = "good",
    };

    private static string Code(int place) => $"point-{place:00}";

    private static string Title(int place) => place switch
    {
        0 => "Pinion shaft runout",
        1 => "Drive side runout",
        _ => $"Shaft {place + 1} runout",
    };
}
