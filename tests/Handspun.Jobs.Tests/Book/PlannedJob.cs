using Handspun.Jobs.Bikes;
using Handspun.Jobs.Book;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Plans;
using Handspun.Jobs.Plans.Reading;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Jobs.Tests.Records;
using Handspun.Metrology.Decision;

namespace Handspun.Jobs.Tests.Book;

/// <summary>A job with a small plan, in memory.</summary>
internal static class PlannedJob
{
    public static Plan Plan { get; } = PlanReader.Read("small", """
        title = "Small plan"

        [[step]]
        code = "ready"
        kind = "check"
        title = "Machine ready"

        [[step]]
        code = "pinion-runout"
        kind = "point"
        gate = true
        after = ["ready"]

        [[step]]
        code = "pump"
        kind = "finding"
        title = "Oil pump"
        places = ["feed side", "return side"]

        [[step]]
        code = "drive-side-runout"
        kind = "point"

        [[step]]
        code = "fasteners"
        kind = "check"
        title = "Fasteners"
        after = ["pump", "drive-side-runout"]

        [[part]]
        code = "lifter-front-intake"
        title = "Lifter"
        place = "front intake"
        faces = "Which way did the oil hole face?"
        """);

    public static Job New() => Make(Plan, [.. PlanPoints.Of(Plan).Select(point => new JobPoint { Code = point.Code, Title = point.Title, Kind = point.Kind, Limit = point.ShippedLimit })]);

    public static Job WithoutPlan() => Make(null, [new JobPoint { Code = "pinion-runout", Title = "Pinion shaft runout" }]);

    public static void Write(this Job job, string about, Deed deed) =>
        job.Entries.Add(new BookEntry { Number = ++job.Version, At = SampleRecords.Start.AddMinutes(job.Version), By = "A. Nobody", About = about, Deed = deed });

    /// <summary>Attaches a record of the pinion's runout with an uncertainty of 0.005 mm.</summary>
    public static void Measure(this Job job, string id, double tirMillimetres, Verdict verdict, double minutes = 0)
    {
        var point = job.Points[0];
        point.Records.Add(SampleRecords.Measured(id, new RunoutFigures { TirMillimetres = tirMillimetres, TirU95Millimetres = 0.005 }, point.Limit, verdict, minutes));
    }

    private static Job Make(Plan? plan, List<JobPoint> points) => new()
    {
        Number = "2026-0001",
        Title = "Cam chest service",
        OpenedAt = SampleRecords.Start,
        Bike = new Bike { Make = "Ardent", Model = "Twin 900", Year = 2004 },
        Plan = plan,
        Points = points,
    };
}
