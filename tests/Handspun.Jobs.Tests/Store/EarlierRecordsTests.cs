using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Jobs.Store;
using Handspun.Metrology.Decision;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace Handspun.Jobs.Tests.Store;

/// <summary>A store that an earlier version of the program wrote is read by this one.</summary>
public sealed class EarlierRecordsTests : IAsyncLifetime
{
    private StoreBench _bench = null!;

    public async Task InitializeAsync()
    {
        _bench = StoreBench.OnANewFile();
        await using var context = await _bench.Contexts.CreateDbContextAsync();
        await context.GetService<IMigrator>().MigrateAsync("First");
    }

    public Task DisposeAsync() => _bench.DisposeAsync().AsTask();

    [Fact]
    public async Task Records_MadeBeforeThereWereKindsOfPoints_AreRunoutsWithAllThatWasKept()
    {
        await WriteAsync();

        await StoreSchema.BringUpToDateAsync(_bench.Contexts, CancellationToken.None);

        var job = await _bench.FindAsync("2025-0007");
        var point = Assert.Single(job.Points);
        Assert.Equal((PointKind.Runout, null, null), (point.Kind, point.Setup, job.Crank));
        Assert.Equal((0.127, "common practice", "r1"), (point.Limit!.UpperMillimetres, point.Limit.Source, point.PickedRecordId));
        var record = point.Counting!;
        Assert.Equal(("r1", RecordStatus.Complete, CaptureEnding.Enough, Verdict.Within), (record.Id, record.Status, record.Ending, record.Verdict));
        Assert.Equal([new RecordWarning("few-turns", "Few.")], record.Warnings);
        Assert.Equal(
            new RunoutFigures
            {
                Readings = 380,
                Rejected = 2,
                Turns = 3.25,
                TirMillimetres = 0.0508,
                TirU95Millimetres = 0.0051,
                EccentricityMillimetres = 0.0249,
                RoundnessMillimetres = 0.0042,
                HighSpotDegrees = 123.4,
                HighSpotU95Degrees = 3.2,
                LowSpotDegrees = 301.5,
                AngleReference = "mark",
            },
            record.Figures);
        var incomplete = point.Records.Single(r => r.Id == "r2");
        Assert.Equal(("Too short.", null, null), (incomplete.Missing, incomplete.Verdict, incomplete.Figures.Value));
        Assert.Equal(60, incomplete.Figures.Readings);
    }

    [Fact]
    public async Task Records_MadeBeforeThereWereKindsOfPoints_TakeFurtherRecordsAndPoints()
    {
        await WriteAsync();
        await StoreSchema.BringUpToDateAsync(_bench.Contexts, CancellationToken.None);

        await _bench.Store.AddPointAsync("2025-0007", PointCatalogue.Usual[1], CancellationToken.None);
        await _bench.Store.AttachAsync("2025-0007", "pinion-runout", Tests.Records.SampleRecords.Complete("r3"), CancellationToken.None);
        await _bench.ReopenAsync();

        var job = await _bench.FindAsync("2025-0007");
        Assert.Equal(["pinion-runout", "drive-side-runout"], job.InOrder.Select(point => point.Code));
        Assert.Equal("r3", job.InOrder.First().Counting!.Id);
    }

    private async Task WriteAsync()
    {
        await _bench.AskAsync("INSERT INTO Bikes (Id, Make, Model, Year) VALUES (1, 'Ardent', 'Twin 900', 2004)");
        await _bench.AskAsync("INSERT INTO Jobs (Id, Number, Title, OpenedAt, BikeId) VALUES (1, '2025-0007', 'Cam chest service', 638000000000000000, 1)");
        await _bench.AskAsync(
            """
            INSERT INTO Points (Id, JobId, Place, Code, Title, Limit_UpperMillimetres, Limit_Source, PickedRecordId)
            VALUES (1, 1, 0, 'pinion-runout', 'Pinion shaft runout', 0.127, 'common practice', 'r1')
            """);
        await _bench.AskAsync(
            """
            INSERT INTO Records (Id, JobPointId, At, Seconds, Ending, Status, Missing, Gauge_Name, Gauge_Profile, Gauge_Port, Gauge_ResolutionMillimetres,
            Gauge_ErrorLimitMillimetres, Limit_UpperMillimetres, Limit_Source, Figures_Readings, Figures_Rejected, Figures_Turns, Figures_TirMillimetres,
            Figures_TirU95Millimetres, Figures_EccentricityMillimetres, Figures_RoundnessMillimetres, Figures_HighSpotDegrees, Figures_HighSpotU95Degrees,
            Figures_LowSpotDegrees, Figures_AngleReference, Verdict, ProbabilityOutside, Warnings)
            VALUES
            ('r1', 1, 638000000000000000, 12.75, 'Enough', 'Complete', NULL, 'pinion', 'bench', '/dev/ttyUSB0', 0.001, 0.003, 0.127, 'common practice',
            380, 2, 3.25, 0.0508, 0.0051, 0.0249, 0.0042, 123.4, 3.2, 301.5, 'mark', 'Within', 0.00001, '[{"Code":"few-turns","Sentence":"Few."}]'),
            ('r2', 1, 638000000600000000, 2, 'StoodStill', 'Incomplete', 'Too short.', 'pinion', 'bench', '/dev/ttyUSB0', 0.001, 0.003, NULL, NULL,
            60, 0, 0.4, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, '[]')
            """);
    }
}
