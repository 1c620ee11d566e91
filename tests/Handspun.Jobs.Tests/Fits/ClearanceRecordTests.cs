using Handspun.Jobs.Bikes;
using Handspun.Jobs.Entries;
using Handspun.Jobs.Fits;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Metrology.Decision;
using Microsoft.Extensions.Time.Testing;

namespace Handspun.Jobs.Tests.Fits;

public class ClearanceRecordTests
{
    private static readonly FakeTimeProvider Time = new(new DateTimeOffset(2026, 3, 14, 9, 0, 0, TimeSpan.Zero));
    private static readonly FitPair Pair = FitPair.All.First(pair => pair.Point.Code == "lifter-clearance-front-intake");

    [Fact]
    public void Pairs_NamePointsOfTheCatalogue_OfTheRightKinds()
    {
        Assert.Equal(6, FitPair.All.Count);
        Assert.All(FitPair.All, pair => Assert.Equal(
            (PointKind.Bore, PointKind.OutsideSize),
            (PointCatalogue.Find(pair.Bore)!.Kind, PointCatalogue.Find(pair.Body)!.Kind)));
    }

    [Theory]
    [InlineData(null, "21.39 mm")]
    [InlineData("21.42 mm", null)]
    public void Clearance_WithOneSizeMissing_IsNotDue(string? bore, string? body) => Assert.Null(Pair.Due(Job(bore, body), Time));

    // Independent uncertainties add as squares (JCGM 100:2008, 5.1.2).
    [Fact]
    public void Clearance_OfTwoSizes_IsBoreLessBody_WithBothUncertainties()
    {
        var record = Pair.Due(Job("21.42 mm", "21.39 mm"), Time)!;

        var figures = Assert.IsType<ClearanceFigures>(record.Figures);
        var each = 2 * 0.01 / Math.Sqrt(12);
        Assert.Equal(0.03, figures.ClearanceMillimetres, 9);
        Assert.Equal(Math.Sqrt(2) * each, figures.ClearanceU95Millimetres, 9);
        Assert.Equal((CaptureEnding.WorkedOut, false), (record.Ending, record.HasFiles));
        Assert.Empty(record.Warnings);
    }

    [Theory]
    [InlineData("21.36 mm", "21.39 mm", "interference", "The body is larger than the bore")]
    [InlineData("21.39 mm", "21.39 mm", "fit-undecided", "cannot tell clearance from interference")]
    public void Clearance_ThatIsNotAboveZero_SaysSo(string bore, string body, string code, string sentence)
    {
        var record = Pair.Due(Job(bore, body), Time)!;

        var warning = Assert.Single(record.Warnings);
        Assert.Equal(code, warning.Code);
        Assert.Contains(sentence, warning.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Clearance_BelowZero_IsWrittenWithItsSign() =>
        Assert.StartsWith("\u22120.030 mm ± ", RecordSentence.Of(Pair.Due(Job("21.36 mm", "21.39 mm"), Time)!, LengthUnit.Millimetre), StringComparison.Ordinal);

    [Theory]
    [InlineData(0.02, 0.05, Verdict.Within)]
    [InlineData(0.03, 0.05, Verdict.Undecided)]
    [InlineData(0.05, 0.08, Verdict.Over)]
    public void Clearance_IsHeldAgainstThePointsOwnLimit(double lower, double upper, Verdict verdict)
    {
        var job = Job("21.42 mm", "21.39 mm");
        job.Points.Add(PointOf(Pair.Point.Code, new Limit { LowerMillimetres = lower, UpperMillimetres = upper, Source = "invented manual, page 9", ConfirmedBy = "A. Nobody" }));

        Assert.Equal(verdict, Pair.Due(job, Time)!.Verdict);
    }

    [Fact]
    public void Clearance_ThatRestsOnTheSameRecordsAndLimit_IsNotDueAgain()
    {
        var job = Job("21.42 mm", "21.39 mm");
        var point = PointOf(Pair.Point.Code, null);
        job.Points.Add(point);
        point.Records.Add(Pair.Due(job, Time)!);
        Assert.Null(Pair.Due(job, Time));

        point.Limit = new Limit { LowerMillimetres = 0.01, Source = "invented manual, page 9" };
        Assert.NotNull(Pair.Due(job, Time));
        point.Limit = null;

        var bore = job.Points.Find(p => p.Code == Pair.Bore)!;
        Time.Advance(TimeSpan.FromMinutes(1));
        bore.Records.Add(RecordOf(bore, "21.44 mm"));
        Assert.Equal(0.05, ((ClearanceFigures)Pair.Due(job, Time)!.Figures).ClearanceMillimetres, 9);
    }

    [Fact]
    public void Clearance_OfABoreMeasuredAtSeveralPlaces_IsOfTheSmallest()
    {
        var job = Job(null, "21.39 mm");
        var bore = job.Points.Find(p => p.Code == Pair.Bore)!;
        bore.Records.AddRange([Rocked(1, 5, 12, 21.412), Rocked(2, 25, 12, 21.404), Rocked(3, 25, 3, 21.418)]);

        var record = Pair.Due(job, Time)!;

        var figures = Assert.IsType<ClearanceFigures>(record.Figures);
        Assert.Equal(("r2", 25, 12), (figures.BoreRecord, figures.BoreDepthMillimetres, figures.BoreClockHours));
        Assert.Equal(0.014, figures.ClearanceMillimetres, 9);
        Assert.Contains(figures.ToShow(LengthUnit.Millimetre), figure => figure.Label == "Bore at its smallest place" && figure.Text.EndsWith("25.0 mm deep, across 12 o'clock", StringComparison.Ordinal));
    }

    [Fact]
    public void Clearance_WhereTheSmallestPlaceWasMeasuredAgain_IsOfTheNewRecordThere()
    {
        var job = Job(null, "21.39 mm");
        var bore = job.Points.Find(p => p.Code == Pair.Bore)!;
        bore.Records.AddRange([Rocked(1, 5, 12, 21.404), Rocked(2, 25, 12, 21.412), Rocked(3, 5, 12, 21.410)]);

        Assert.Equal("r3", ((ClearanceFigures)Pair.Due(job, Time)!.Figures).BoreRecord);
    }

    [Fact]
    public void Clearance_WhereATypedSizeOfTheBoreCounts_IsOfThat()
    {
        var job = Job("21.42 mm", "21.39 mm");
        var bore = job.Points.Find(p => p.Code == Pair.Bore)!;
        bore.PickedRecordId = bore.Records[0].Id;
        bore.Records.Add(Rocked(1, 5, 12, 21.412));

        Assert.Equal(0.03, ((ClearanceFigures)Pair.Due(job, Time)!.Figures).ClearanceMillimetres, 9);
    }

    [Fact]
    public void Clearance_OfABodyThatWasCaptured_TakesItsSize()
    {
        var job = Job("21.42 mm", null);
        var rolled = Rocked(1, 0, 12, 21.391);
        job.Points.Find(p => p.Code == Pair.Body)!.Records.Add(new CaptureRecord
        {
            Id = rolled.Id,
            At = rolled.At,
            Seconds = rolled.Seconds,
            Ending = rolled.Ending,
            Status = rolled.Status,
            Gauge = rolled.Gauge,
            Figures = (BoreFigures)rolled.Figures with { Outside = true, DepthMillimetres = null, ClockHours = null },
        });

        var figures = (ClearanceFigures)Pair.Due(job, Time)!.Figures;

        Assert.Equal(0.029, figures.ClearanceMillimetres, 9);
        Assert.Equal(0.0023, figures.BodyU95Millimetres, 9);
    }

    private static CaptureRecord Rocked(int minute, double depth, double clock, double size) => new()
    {
        Id = $"r{minute}",
        At = Time.GetUtcNow().AddMinutes(minute),
        Seconds = 6,
        Ending = CaptureEnding.Enough,
        Status = RecordStatus.Complete,
        Gauge = new RecordGauge { Name = "bore", Profile = "text-line", Port = "COM3" },
        Figures = new BoreFigures
        {
            Passes = 6,
            DeviationMillimetres = size - 21.4,
            DeviationU95Millimetres = 0.001,
            SizeMillimetres = size,
            SizeU95Millimetres = 0.0023,
            OwnU95Millimetres = 0.001,
            SharedU95Millimetres = 0.002,
            SettingMillimetres = 21.4,
            SettingU95Millimetres = 0.002,
            DepthMillimetres = depth,
            ClockHours = clock,
        },
    };

    private static Job Job(string? bore, string? body)
    {
        var (hole, pin) = (PointOf(Pair.Bore, null), PointOf(Pair.Body, null));
        foreach (var (point, typed) in new[] { (hole, bore), (pin, body) })
        {
            if (typed is not null)
            {
                point.Records.Add(RecordOf(point, typed));
            }
        }

        return new Job
        {
            Number = "2026-0001",
            Title = "Cam chest service",
            OpenedAt = Time.GetUtcNow(),
            Bike = new Bike { Make = "Ardent", Model = "Twin 900", Year = 2004 },
            Points = [hole, pin],
        };
    }

    private static JobPoint PointOf(string code, Limit? limit)
    {
        var point = PointCatalogue.Find(code)!;
        return new JobPoint { Code = code, Title = point.Title, Kind = point.Kind, Limit = limit };
    }

    private static CaptureRecord RecordOf(JobPoint point, string typed) => EntryRecord.Of(
        point,
        EntryReading.Of(point, new TypedEntry { Value = typed, Tool = "micrometer", Division = "0.01 mm", ErrorLimit = "0 mm", By = "Ines" }),
        Time);
}
