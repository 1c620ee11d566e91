using System.Globalization;
using System.Text.Json;
using Microsoft.Playwright;

namespace Handspun.Delay;

/// <summary>Bay screens in headless Chromium that note on which frame each reading was first drawn.</summary>
/// <remarks>
/// The screen puts the newest reading's number and its trace on the page in one and the same frame. The stamp is taken in the
/// task that follows that frame's painting, by the page's own clock (performance.timeOrigin). Not counted: what the compositor,
/// the display and its glass still need.
/// </remarks>
internal sealed class Screens : IAsyncDisposable
{
    private const string StampsFrames =
        """
        (() => {
          const drawn = globalThis.drawnReadings = [];
          const waiting = [];
          const { port1, port2 } = new MessageChannel();
          port1.onmessage = () => {
            const at = performance.timeOrigin + performance.now();
            for (const number of waiting.splice(0)) drawn.push([number, at]);
          };
          document.addEventListener('DOMContentLoaded', () => {
            const place = document.querySelector('[data-testid=bay-reading]');
            if (!place) return;
            new MutationObserver(() => {
              if (place.textContent === '') return;
              waiting.push(Math.round(1000 * Number(place.textContent)));
              port2.postMessage(0);
            }).observe(place, { childList: true, characterData: true, subtree: true });
          });
        })();
        """;

    private readonly StationUnderTest _station;
    private readonly IPlaywright _playwright;
    private readonly IBrowser _browser;
    private readonly List<(int Gauge, IPage Page)> _pages = [];

    private Screens(StationUnderTest station, IPlaywright playwright, IBrowser browser) => (_station, _playwright, _browser) = (station, playwright, browser);

    /// <summary>Readings whose frame is known, of all screens together.</summary>
    public int Drawn { get; private set; }

    /// <summary>How far the pages' clocks were from the wall clock, the farthest, in milliseconds.</summary>
    public double ClockOff { get; private set; }

    /// <summary>Starts Chromium; no window and no GPU.</summary>
    public static async Task<(IPlaywright Playwright, IBrowser Browser)> BrowserAsync()
    {
        var playwright = await Playwright.CreateAsync();
        return (playwright, await playwright.Chromium.LaunchAsync(new() { ExecutablePath = "/usr/bin/chromium", Args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync", "--js-flags=--expose-gc", "--enable-precise-memory-info"] }));
    }

    /// <summary>Opens so many screens, which show the points of so many gauges in turn.</summary>
    public static async Task<Screens> OpenAsync(StationUnderTest station, int many, int gauges)
    {
        var (playwright, browser) = await BrowserAsync();
        var screens = new Screens(station, playwright, browser);
        for (var i = 0; i < many; i++)
        {
            var page = await browser.NewPageAsync(new() { ViewportSize = new() { Width = 1280, Height = 800 } });
            await page.AddInitScriptAsync(StampsFrames);
            await page.GotoAsync(new Uri(station.Pages, $"bay?gauge={StationUnderTest.Name(i % gauges)}").ToString());
            await page.WaitForSelectorAsync("[data-testid=bay][data-stage=waiting]");
            screens._pages.Add((i % gauges, page));
        }

        return screens;
    }

    /// <summary>From before a reading's last byte was written to after the painting of the first frame that held it, shortest first.</summary>
    public async Task<IReadOnlyList<double>> DelaysMillisecondsAsync()
    {
        var delays = new List<double>();
        foreach (var (gauge, page) in _pages)
        {
            ClockOff = Math.Max(ClockOff, Math.Abs(await page.EvaluateAsync<double>("() => Date.now() - performance.timeOrigin - performance.now()")));
            var drawn = JsonDocument.Parse(await page.EvaluateAsync<string>("() => JSON.stringify(drawnReadings)")).RootElement
                .EnumerateArray().Select(pair => (Number: pair[0].GetInt32(), At: pair[1].GetDouble())).ToList();
            var next = 0;   // a frame first holds every reading since the one before
            foreach (var (number, at) in drawn)
            {
                for (; next <= number; next++)
                {
                    if (_station.SentOnTheWall(gauge, next) is > 0 and var sent)
                    {
                        delays.Add(at - sent);
                    }
                }
            }
        }

        Drawn = delays.Count;
        delays.Sort();
        return delays.Count > 0 ? delays : throw new InvalidOperationException(string.Create(CultureInfo.InvariantCulture, $"None of {_pages.Count} screens drew a reading: open {_station.Pages}bay by hand to see why."));
    }

    public async ValueTask DisposeAsync()
    {
        await _browser.DisposeAsync();
        _playwright.Dispose();
    }
}
