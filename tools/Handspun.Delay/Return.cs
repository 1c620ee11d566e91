using System.Globalization;
using Handspun.EndToEnd.Parts;

namespace Handspun.Delay;

/// <summary>How soon a bay screen says that its wifi is gone, and how soon it is right again when it is back.</summary>
internal static class Return
{
    private const int Cuts = 12;
    private static readonly TimeSpan Pace = TimeSpan.FromMilliseconds(10);
    private static readonly TimeSpan Between = TimeSpan.FromSeconds(4);

    private const string NotesContact =
        """
        (() => {
          globalThis.contacts = [];
          let was = document.querySelector('.bay').dataset.contact;
          setInterval(() => {
            const now = document.querySelector('.bay').dataset.contact;
            if (now !== was) contacts.push([now, Date.now()]);
            was = now;
          }, 5);
        })()
        """;

    /// <summary>Cuts the wifi again and again, for four seconds and a little more each time, and prints how long the screen took.</summary>
    public static async Task RunAsync(CancellationToken cancellationToken)
    {
        await using var station = await StationUnderTest.StartAsync(1, cancellationToken);
        await station.MeasureAsync(["pinion-runout"], wanted: 20, cancellationToken);
        await using var wifi = new Wifi(station.Pages);
        var (playwright, browser) = await Screens.BrowserAsync();
        using var ends = playwright;
        await using var closes = browser;
        using var over = CancellationTokenSource.CreateLinkedTokenSource(cancellationToken);
        var gauge = station.ShowAsync(_ => 0, int.MaxValue, Pace, 1, over.Token);
        var page = await browser.NewPageAsync(new() { ViewportSize = new() { Width = 390, Height = 844 } });
        await page.GotoAsync(new Uri(wifi.Pages, "bay").ToString());
        await page.WaitForSelectorAsync("[data-testid=bay][data-stage=waiting]");
        await page.EvaluateAsync(NotesContact);
        var (told, back) = (new List<double>(), new List<double>());
        for (var cut = 0; cut < Cuts; cut++)
        {
            await Task.Delay(Between, TimeProvider.System, cancellationToken);
            var cutAt = Now();
            await wifi.CutAsync();
            told.Add(await UntilAsync("lost") - cutAt);
            await Task.Delay(Between + TimeSpan.FromMilliseconds(90 * cut), TimeProvider.System, cancellationToken);   // not in step with the screen's looks
            var mendedAt = Now();
            wifi.Mend();
            back.Add(await UntilAsync("live") - mendedAt);
        }

        Console.WriteLine("the wifi is gone, said after: " + InWords(told));
        Console.WriteLine("it is back, right again after: " + InWords(back));
        await over.CancelAsync();
        try
        {
            await gauge;
        }
        catch (OperationCanceledException)
        {
            // The gauge sent until the end.
        }

        async Task<double> UntilAsync(string contact)
        {
            await page.WaitForFunctionAsync("(contact) => contacts.at(-1)?.[0] === contact", contact);
            return await page.EvaluateAsync<double>("() => contacts.at(-1)[1]");
        }
    }

    private static double Now() => (TimeProvider.System.GetUtcNow() - DateTimeOffset.UnixEpoch).TotalMilliseconds;

    private static string InWords(List<double> milliseconds)
    {
        milliseconds.Sort();
        return string.Create(CultureInfo.InvariantCulture, $"median {milliseconds[milliseconds.Count / 2]:0} ms, longest {milliseconds[^1]:0} ms, {milliseconds.Count} times");
    }
}
