using Microsoft.Playwright;

namespace Handspun.EndToEnd.Parts;

/// <summary>Debian's Chromium, without a window.</summary>
public sealed class Browser : IAsyncLifetime
{
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    public async Task InitializeAsync()
    {
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
        {
            ExecutablePath = "/usr/bin/chromium",
            Args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
        });
    }

    /// <summary>A new page; what goes wrong in it fails the test that looks at <see cref="PageWithTroubles.Troubles"/>.</summary>
    /// <param name="address">Its address.</param>
    /// <param name="width">Of the screen, in CSS pixels.</param>
    /// <param name="height">The same.</param>
    /// <param name="before">A script that runs before those of the page; null for none.</param>
    internal async Task<PageWithTroubles> OpenAsync(Uri address, int width = 1280, int height = 800, string? before = null)
    {
        var page = await _browser!.NewPageAsync(new BrowserNewPageOptions { ViewportSize = new ViewportSize { Width = width, Height = height } });
        var troubles = new List<string>();
        page.PageError += (_, error) => troubles.Add(error);
        page.Console += (_, message) =>
        {
            if (message.Type == "error")
            {
                troubles.Add(message.Text);
            }
        };
        if (before is not null)
        {
            await page.AddInitScriptAsync(before);
        }

        await page.GotoAsync(address.ToString());
        return new PageWithTroubles(page, troubles);
    }

    public async Task DisposeAsync()
    {
        if (_browser is not null)
        {
            await _browser.DisposeAsync();
        }

        _playwright?.Dispose();
    }
}

/// <summary>A page and what went wrong in it.</summary>
internal sealed record PageWithTroubles(IPage Page, IReadOnlyList<string> Troubles)
{
    public ILocator Place(string testId) => Page.GetByTestId(testId);
}
