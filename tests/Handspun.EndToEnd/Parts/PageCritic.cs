using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Handspun.EndToEnd.Parts;

/// <summary>Looks at a page in light and dark, on a desk's screen and on a phone, with the rules of axe-core, at its width on the phone, and at whether the keyboard reaches everything.</summary>
internal sealed class PageCritic(IPage page)
{
    private const int PhoneWidth = 360;
    private const int SparePresses = 6;   // what scrolls takes the focus too
    private static readonly (int Width, int Height)[] Screens = [(1280, 800), (PhoneWidth, 740)];

    private readonly List<string> _found = [];

    /// <summary>What was found so far: where, which rule, and on what.</summary>
    public IReadOnlyList<string> Found => _found;

    /// <summary>Opens an address and looks at it, all that folds away unfolded.</summary>
    public async Task OpenAsync(Uri address)
    {
        await page.GotoAsync(address.ToString());
        await LookAsync(address.PathAndQuery);
    }

    /// <summary>Looks at what the page shows now.</summary>
    public async Task LookAsync(string name)
    {
        await page.EvaluateAsync("() => document.querySelectorAll('details').forEach(one => { one.open = true; })");
        foreach (var (width, height) in Screens)
        {
            await page.SetViewportSizeAsync(width, height);
            foreach (var scheme in new[] { ColorScheme.Light, ColorScheme.Dark })
            {
                await page.EmulateMediaAsync(new() { ColorScheme = scheme, ReducedMotion = ReducedMotion.Reduce });
                var answer = await page.RunAxe();
                Assert.NotEmpty(answer.Passes);   // the rules did run
                _found.AddRange(answer.Violations.SelectMany(rule => rule.Nodes.Select(node => $"{name} ({width}, {scheme}): {Sentence(rule, node)}")));
            }
        }

        var wide = await page.EvaluateAsync<int>("() => document.documentElement.scrollWidth");
        if (wide > PhoneWidth)
        {
            _found.Add($"{name}: {wide} pixels wide on a phone of {PhoneWidth}");
        }

        await WalkAsync(name);
    }

    // From the top of the page, once through it: radio buttons of one name are one stop.
    private async Task WalkAsync(string name)
    {
        var stops = await page.EvaluateAsync<int>("""
            () => {
              const stopOf = one => one.type === 'radio' ? `${[...document.forms].indexOf(one.form)} ${one.name}` : one;
              const controls = [...document.querySelectorAll('a[href], button, input, select, textarea, summary')]
                .filter(one => !one.disabled && one.type !== 'hidden' && one.checkVisibility({ visibilityProperty: true }));
              window.left = new Map(controls.map(one => [stopOf(one), one]));
              document.addEventListener('focusin', event => window.left.delete(stopOf(event.target)));
              document.body.tabIndex = -1;
              document.body.focus();
              return window.left.size;
            }
            """);
        for (var press = 0; press < stops + SparePresses; press++)
        {
            await page.Keyboard.PressAsync("Tab");
        }

        _found.AddRange((await page.EvaluateAsync<string[]>("() => [...window.left.values()].map(one => one.outerHTML.slice(0, 160))")).Select(left => $"{name}: the keyboard does not reach {left}"));
    }

    private static string Sentence(AxeResultItem rule, AxeResultNode node) => $"{rule.Id}: {rule.Help}: {node.Html}";
}
