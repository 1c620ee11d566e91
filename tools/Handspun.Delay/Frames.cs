using System.Globalization;
using System.IO.Compression;
using System.Reflection;
using System.Text.Json;
using Microsoft.Playwright;

namespace Handspun.Delay;

/// <summary>How evenly the bay screen draws while a shaft turns, before and after an hour's readings; how soon it paints; what its scripts weigh.</summary>
internal static class Frames
{
    private const int ReadingsASecond = 100;
    private const double TurnsASecond = 0.2;
    private const double HalfTirMillimetres = 0.0381;
    private const int SecondsBefore = 11;   // two turns and the hand's start
    private const int SecondsWatched = 10;
    private const int Opened = 10;
    private const int Hour = 3600 * ReadingsASecond;
    private const int FasterBy = 50;
    private const int AtOnce = 10;

    private static readonly TimeSpan Pace = TimeSpan.FromSeconds(1.0 / ReadingsASecond);

    private const string WeighsFrames =
        """
        (() => {
          const own = globalThis.requestAnimationFrame.bind(globalThis);
          globalThis.frameWork = [];
          globalThis.requestAnimationFrame = (then) => own((at) => {
            const began = performance.now();
            then(at);
            frameWork.push(performance.now() - began);
          });
          globalThis.frameTimes = (seconds) => new Promise((done) => {
            const times = [];
            frameWork.length = 0;
            own(function next(at) {
              times.push(at);
              if (at - times[0] < seconds * 1000) own(next);
              else done(JSON.stringify({ times, work: frameWork.splice(0) }));
            });
          });
        })();
        """;

    /// <summary>Measures all of it and prints it.</summary>
    public static async Task RunAsync(CancellationToken cancellationToken)
    {
        Console.WriteLine($"scripts, all together: {ScriptBytes():N0} bytes in brotli");
        await using var station = await StationUnderTest.StartAsync(1, cancellationToken);
        await station.MeasureAsync(["pinion-runout"], wanted: 20, cancellationToken);
        var (playwright, browser) = await Screens.BrowserAsync();
        using var ends = playwright;
        await using var closes = browser;
        await FirstPaintAsync(browser, station);

        var page = await browser.NewPageAsync(new() { ViewportSize = new() { Width = 1280, Height = 800 } });
        await page.AddInitScriptAsync(WeighsFrames);
        await page.GotoAsync("about:blank");
        Print("an empty page", await WatchAsync(page));
        await page.GotoAsync(new Uri(station.Pages, "bay").ToString());
        await page.WaitForSelectorAsync("[data-testid=bay][data-stage=waiting]");
        await RestAsync(station, cancellationToken);
        await TurnAsync("two turns and more in view, at the start", page, station, cancellationToken);
        await RestAsync(station, cancellationToken);
        await station.ShowAsync(_ => 0, Hour, Pace * AtOnce / FasterBy, AtOnce, cancellationToken);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"an hour's readings ({Hour}) were sent to the port {FasterBy} times as fast, the shaft at rest"));
        await RestAsync(station, cancellationToken);
        await TurnAsync("two turns and more in view, after them", page, station, cancellationToken);
    }

    private static Task RestAsync(StationUnderTest station, CancellationToken cancellationToken) =>
        station.ShowAsync(_ => 0, 5 * ReadingsASecond, Pace, 1, cancellationToken);

    private static async Task TurnAsync(string when, IPage page, StationUnderTest station, CancellationToken cancellationToken)
    {
        var turning = station.ShowAsync(
            i => HalfTirMillimetres * (1 - Math.Cos(2 * Math.PI * TurnsASecond * i / ReadingsASecond)),
            (SecondsBefore + SecondsWatched + 3) * ReadingsASecond,
            Pace,
            1,
            cancellationToken);
        await page.WaitForSelectorAsync("[data-testid=bay][data-stage=running]");
        await page.WaitForFunctionAsync("() => Number.parseFloat(document.querySelector('[data-testid=bay-turns]').textContent) >= 2");
        Print(when, await WatchAsync(page));
        Console.WriteLine($"  script memory in use: {await page.EvaluateAsync<double>("() => { gc(); return performance.memory.usedJSHeapSize / 1e6; }"):0.0} MB");
        await station.FinishAsync(0, cancellationToken);
        await turning;
    }

    private static async Task<(List<double> Intervals, List<double> Work)> WatchAsync(IPage page)
    {
        var told = JsonDocument.Parse(await page.EvaluateAsync<string>($"() => frameTimes({SecondsWatched})")).RootElement;
        var times = told.GetProperty("times").EnumerateArray().Select(time => time.GetDouble()).ToList();
        return ([.. times.Zip(times.Skip(1), (before, after) => after - before).Order()], [.. told.GetProperty("work").EnumerateArray().Select(work => work.GetDouble()).Order()]);
    }

    private static void Print(string when, (List<double> Intervals, List<double> Work) seen)
    {
        var (intervals, work) = seen;
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{when}: {1000 / intervals.Average():0.0} frames a second; {100.0 * intervals.Count(interval => interval > 25) / intervals.Count:0.0} % came late, longest {intervals[^1]:0} ms"));
        if (work.Count > 0)
        {
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  the screen's own work in a frame: median {work[work.Count / 2]:0.00} ms, 99 % {work[(int)(0.99 * (work.Count - 1))]:0.00} ms"));
        }
    }

    private static async Task FirstPaintAsync(IBrowser browser, StationUnderTest station)
    {
        var paints = new List<double>();
        for (var i = 0; i < Opened; i++)
        {
            await using var context = await browser.NewContextAsync(new() { ViewportSize = new() { Width = 390, Height = 844 } });   // nothing kept from before
            var page = await context.NewPageAsync();
            await page.GotoAsync(new Uri(station.Pages, "bay").ToString());
            await page.WaitForFunctionAsync("() => performance.getEntriesByName('first-contentful-paint').length > 0");
            paints.Add(await page.EvaluateAsync<double>("() => performance.getEntriesByName('first-contentful-paint')[0].startTime"));
        }

        paints.Sort();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"first paint with content, {Opened} times with nothing kept: median {paints[Opened / 2]:0} ms, longest {paints[^1]:0} ms"));
    }

    private static long ScriptBytes()
    {
        var folder = typeof(Frames).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(metadata => metadata.Key == "Scripts").Value!;
        return Directory.EnumerateFiles(folder, "*.js").Sum(script =>
        {
            using var packed = new MemoryStream();
            using (var brotli = new BrotliStream(packed, CompressionLevel.SmallestSize, leaveOpen: true))
            {
                brotli.Write(File.ReadAllBytes(script));
            }

            return packed.Length;
        });
    }
}
