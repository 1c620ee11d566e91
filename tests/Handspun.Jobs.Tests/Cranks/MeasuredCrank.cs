using Handspun.Jobs.Bikes;
using Handspun.Jobs.Cranks;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Points;
using Handspun.Jobs.Points.Catalogue;
using Handspun.Jobs.Records;
using Handspun.Jobs.Tests.Records;

namespace Handspun.Jobs.Tests.Cranks;

/// <summary>A job in which a crank was measured at both ends: 60 and 40 mm outside its bearings, which are 120 mm apart.</summary>
internal sealed record MeasuredCrank
{
    public RunoutFigures? Drive { get; init; } = Off(0.03, 30);

    public RunoutFigures? Pinion { get; init; } = Off(0.02, 30);

    public CrankSheet? Sheet { get; init; } = new() { BetweenBearingsMillimetres = 120, DivisionMillimetres = 1, CrankpinDegrees = 30, CrankpinDivisionDegrees = 5 };

    public static RunoutSetup DriveSetup { get; } = new() { FromBearingMillimetres = 60, DivisionMillimetres = 1 };

    public static RunoutSetup PinionSetup { get; } = new() { FromBearingMillimetres = 40, DivisionMillimetres = 1 };

    /// <summary>What is kept of a shaft that is off the axis of rotation by so much, toward there.</summary>
    public static RunoutFigures Off(double millimetres, double degrees) => new()
    {
        TirMillimetres = 2 * millimetres,
        TirU95Millimetres = 0.002,
        EccentricityMillimetres = millimetres,
        EccentricityU95Millimetres = 0.001,
        EccentricityTowardDegrees = degrees,
        EccentricityTowardU95Degrees = 4,
        AngleReference = "index",
    };

    public Job Job() => new()
    {
        Number = "2026-0001",
        Title = "Bottom end",
        OpenedAt = SampleRecords.Start,
        Bike = new Bike { Make = "Ardent", Model = "Twin 900", Year = 2004 },
        Crank = Sheet,
        Points = [Point(RunoutPoints.Pinion, PinionSetup, Pinion), Point(RunoutPoints.DriveSide, DriveSetup, Drive)],
    };

    private static JobPoint Point(MeasuringPoint point, RunoutSetup setup, RunoutFigures? figures) => new()
    {
        Code = point.Code,
        Title = point.Title,
        Setup = setup,
        Records = figures is null ? [] : [Record(point.Code, figures)],
    };

    private static CaptureRecord Record(string id, RunoutFigures figures) => new()
    {
        Id = id,
        At = SampleRecords.Start,
        Seconds = 10,
        Ending = CaptureEnding.Enough,
        Status = RecordStatus.Complete,
        Gauge = new RecordGauge { Name = "pinion", Profile = "bench", Port = "" },
        Figures = figures,
    };
}
