using System.Text.Json;
using Handspun.Capture.Finishing;
using Handspun.Capture.Methods.Runout;
using Handspun.Capture.Tests.Bays;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;
using Handspun.Simulation;

namespace Handspun.Capture.Tests.Methods.Runout;

public sealed class IndicatorStandTests
{
    private static readonly RunoutSetup Lever = new() { LeverDegrees = 60, Celsius = 26 };
    private static readonly ShaftShape Shaft = ShaftShape.WithTir(0.08, seed: 5, harmonics: 2);

    [Fact]
    public void Readings_OfAPlunger_AreTakenAsTheyAre()
    {
        var readings = new RotationCapture { Seconds = new[] { 0.0, 0.1 }, Millimetres = new[] { 0.2, 0.3 } };

        Assert.Same(readings, IndicatorStand.Readings(readings, null));
        Assert.Same(readings, IndicatorStand.Readings(readings, new RunoutSetup { FromBearingMillimetres = 40, DivisionMillimetres = 1 }));
        Assert.Equal([0.1, 0.15], IndicatorStand.Readings(readings, Lever).Millimetres.ToArray().Select(reading => Math.Round(reading, 12)));   // cos 60° = 1/2
    }

    [Fact]
    public void Gauge_ThatStandsAsALever_HasItsAngleAndTemperature()
    {
        var gauge = IndicatorStand.Gauge(new GaugeTraits { Resolution = Length.FromMillimetres(0.002) }, Lever);

        Assert.Equal((60, 26), (gauge.LeverDegrees, gauge.Celsius));
        Assert.Equal(0.001, gauge.Resolution.Millimetres, 1e-12);
    }

    // What a lever at 60 degrees shows is twice what the surface does; live and replayed alike.
    [Fact]
    public async Task Lever_AtAPoint_IsCorrectedLiveAndInTheReplay()
    {
        await using var bench = new BayBench();
        await bench.ConnectAsync();
        var point = BayBench.Point with { Setup = Lever, Limit = null };
        bench.Bay.Assign(point);
        await bench.TurnAsync(Shaft, HandTurn.Create(seed: 2, turns: 3.8, turnsPerSecond: 0.5), standAfter: 1);
        await BayBench.UntilAsync(() => bench.Seen.Finished.Count == 1);

        var capture = bench.Seen.Finished[0];
        var figures = (RunoutFigures)RecordMaking.RecordOf(capture).Figures;
        Assert.InRange(Shaft.TirMillimetres / 2, figures.TirMillimetres!.Value - figures.TirU95Millimetres!.Value, figures.TirMillimetres.Value + figures.TirU95Millimetres.Value);

        var task = JournalledTask.Read(JournalledTask.TextOf(capture.Task))!;
        var again = point.Method.Measure(
            ReplayedCapture.Of(bench.Replay(capture), capture.From, task.Setup), RecordMaking.TraitsOf(capture.Gauge.Profile, task.LastCheck, task.Setup), task.Wish);
        Assert.Equal(JsonSerializer.Serialize(capture.Finding.Figures, FiguresJson.Options), JsonSerializer.Serialize(again.Figures, FiguresJson.Options));
    }
}
