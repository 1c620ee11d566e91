using System.CommandLine;
using System.Net;
using Handspun.Bays;
using Handspun.Capture.Bays;
using Handspun.Demo;
using Handspun.Filing;
using Handspun.Gauges.Listening;
using Handspun.Jobs.Cautions;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Points;
using Handspun.Jobs.Points.Catalogue;
using Handspun.Jobs.Records;
using Handspun.Jobs.Store;
using Handspun.Station;

namespace Handspun.Commands;

/// <summary><c>handspun demo</c>: the whole station with a virtual gauge and an invented job.</summary>
internal static class DemoCommand
{
    private const string GaugeProfile = "text-line";
    private static readonly TimeSpan Look = TimeSpan.FromMilliseconds(100);
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    /// <summary>The command.</summary>
    public static Command Create()
    {
        var shared = new StationCommandOptions(DataFolder.Default + "-demo");
        var once = new Option<bool>("--once") { Description = "Measure once without a browser, print the result and end." };
        var command = new Command("demo", "See the station at work: a virtual gauge on a virtual shaft, an invented job, the real pages.") { once };
        shared.AddTo(command);
        command.SetAction(async (parsed, stopping) =>
        {
            using var data = shared.TakeFolder(parsed);
            await using var gauge = await VirtualGaugeProcess.StartAsync(DemoJob.TrueTirMillimetres, stopping);
            var options = shared.Read(parsed, data, [new GaugeOption("pinion", GaugeProfile, gauge.Port)]) with { Quiet = true };
            await using var station = await StartAsync(options, anyPort: !shared.PortsAreGiven(parsed), stopping);
            var job = await DemoJob.OpenAsync(station.Services.GetRequiredService<JobStore>(), stopping);
            return parsed.GetValue(once)
                ? await MeasureOnceAsync(station, job, gauge, stopping)
                : await ShowAsync(station, job, gauge, stopping);
        });
        return command;
    }

    // The demo must not fail because a station runs already, or because something else has the usual ports.
    private static async Task<WebApplication> StartAsync(StationOptions options, bool anyPort, CancellationToken stopping)
    {
        var station = StationHost.Build(options);
        try
        {
            await StationHost.StartAsync(station, options, stopping);
            return station;
        }
        catch (StationTroubleException) when (anyPort)
        {
            await station.DisposeAsync();
            var free = options with { Http = new IPEndPoint(IPAddress.Loopback, 0), Mqtt = new IPEndPoint(IPAddress.Loopback, 0) };
            station = StationHost.Build(free);
            await StationHost.StartAsync(station, free, stopping);
            return station;
        }
    }

    private static async Task<int> ShowAsync(WebApplication station, Job job, VirtualGaugeProcess gauge, CancellationToken stopping)
    {
        var addresses = StationAddresses.Of(station);
        Console.WriteLine($"""

            Open        {addresses.Pages}jobs/{job.Number}
            Bay screen  {addresses.Pages}bay
            Broker      mqtt://127.0.0.1:{addresses.BrokerPort}, topics below handspun/v1/

            Read the cautions on the job's page and press "Measure": a virtual hand then turns the wheel.
            Press Enter here to turn it again; Ctrl+C ends the demo.

            """);
        var lifetime = station.Services.GetRequiredService<IHostApplicationLifetime>();
        using var ending = CancellationTokenSource.CreateLinkedTokenSource(stopping, lifetime.ApplicationStopping);
        var hand = new DemoHand(station.Services.GetRequiredService<Bay>(), gauge, TimeProvider.System).WatchAsync(ending.Token);
        _ = TurnOnEnterAsync(gauge, ending.Token);
        await station.WaitForShutdownAsync(stopping);
        try
        {
            await hand;
        }
        catch (OperationCanceledException)
        {
            // The demo has ended.
        }

        return 0;
    }

    // Reading the console blocks a thread and cannot be cancelled; it ends with the program.
    private static Task TurnOnEnterAsync(VirtualGaugeProcess gauge, CancellationToken ending) => Task.Run(
        async () =>
        {
            while (!ending.IsCancellationRequested && Console.In.ReadLine() is not null)
            {
                await gauge.TurnAsync();
            }
        },
        ending);

    private static async Task<int> MeasureOnceAsync(WebApplication station, Job job, VirtualGaugeProcess gauge, CancellationToken stopping)
    {
        Console.WriteLine("Before a real shaft is turned:");
        foreach (var caution in RunoutCautions.Sentences)
        {
            Console.WriteLine($"  - {caution}");
        }

        Console.WriteLine();
        var services = station.Services;
        var (store, bay, gauges) = (services.GetRequiredService<JobStore>(), services.GetRequiredService<Bay>(), services.GetRequiredService<GaugeRoster>());
        var point = RunoutPoints.Pinion.Code;
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(stopping);
        patience.CancelAfter(Patience);
        try
        {
            await services.GetRequiredService<BayDesk>().AssignAsync(new BayWish(job.Number, point), cautionsRead: true, patience.Token);
            await UntilAsync(() => ValueTask.FromResult(gauges.All.Single().State.Condition == GaugeCondition.Reading), patience.Token);
            var capture = bay.View().Progress!.Capture;
            await gauge.TurnAsync();
            (Job Job, JobPoint Point, CaptureRecord Record)? found = null;
            await UntilAsync(async () => (found = await store.FindRecordAsync(capture, patience.Token)) is not null, patience.Token);
            var (filed, place, record) = found!.Value;
            Console.WriteLine(DemoBlock.Of(filed, place, record, services.GetRequiredService<RecordFolder>(), services.GetRequiredService<StationOptions>().Unit));
        }
        catch (OperationCanceledException) when (!stopping.IsCancellationRequested)
        {
            throw new StationTroubleException($"No record came within {Patience.TotalSeconds:0} seconds; the gauge says: {gauges.All.Single().State.Sentence}");
        }

        await station.StopAsync(stopping);
        return 0;
    }

    private static async Task UntilAsync(Func<ValueTask<bool>> condition, CancellationToken cancellationToken)
    {
        using var timer = new PeriodicTimer(Look, TimeProvider.System);
        while (!await condition())
        {
            await timer.WaitForNextTickAsync(cancellationToken);
        }
    }
}
