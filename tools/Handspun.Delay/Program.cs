using System.CommandLine;
using System.Globalization;
using Handspun.Delay;

string[] points = ["pinion-runout", "drive-side-runout"];   // what the first gauges measure while screens look on
var gauges = new Option<int>("--gauges") { Description = "How many gauges send at once.", DefaultValueFactory = _ => 1 };
var rate = new Option<double>("--rate") { Description = "Readings a second of each.", DefaultValueFactory = _ => 100 };
var seconds = new Option<double>("--seconds") { Description = "How long they send.", DefaultValueFactory = _ => 30 };
var subscribers = new Option<int>("--subscribers") { Description = "How many clients the broker serves; the delay is that of the last one.", DefaultValueFactory = _ => 1 };
var screens = new Option<int>("--screens") { Description = "How many bay screens are open in headless Chromium; their delay, to the frame that first shows a reading, is told as well.", DefaultValueFactory = _ => 0 };
var frames = new Command("frames", "How evenly the bay screen draws at the start and after an hour's readings, how soon it paints, and what its scripts weigh.");
frames.SetAction(async (_, stopping) => await Frames.RunAsync(stopping));
var back = new Command("back", "How soon a bay screen says that its wifi is gone, and how soon it is right again when the wifi is back.");
back.SetAction(async (_, stopping) => await Return.RunAsync(stopping));
var root = new RootCommand("How long a reading takes from the last byte at a serial port to a subscriber of the broker, and to a screen, through the real service.") { gauges, rate, seconds, subscribers, screens, frames, back };
root.SetAction(async (parsed, stopping) =>
{
    await using var station = await StationUnderTest.StartAsync(parsed.GetValue(gauges), stopping);
    await using var ears = await Ears.ListenAsync(station, parsed.GetValue(subscribers), stopping);
    var shown = points.Take(parsed.GetValue(gauges)).ToList();
    if (parsed.GetValue(screens) > 0)
    {
        await station.MeasureAsync(shown, wanted: 20, stopping);
    }

    await using var eyes = parsed.GetValue(screens) > 0 ? await Screens.OpenAsync(station, parsed.GetValue(screens), shown.Count) : null;
    await station.SendAsync(parsed.GetValue(rate), TimeSpan.FromSeconds(parsed.GetValue(seconds)), before: eyes is null ? TimeSpan.Zero : ScreensBegin, stopping);
    await ears.QuietAsync(stopping);
    Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"sent {station.Sent}, heard {ears.Heard} by {parsed.GetValue(subscribers)} subscribers"));
    Console.WriteLine("to a subscriber: " + InWords(ears.DelaysMilliseconds()));
    if (eyes is not null)
    {
        var delays = await eyes.DelaysMillisecondsAsync();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"drawn {eyes.Drawn} by {parsed.GetValue(screens)} screens, whose clocks were off by {eyes.ClockOff:0.0} ms at most"));
        Console.WriteLine("to a screen: " + InWords(delays));
    }

    return ears.Heard == station.Sent * parsed.GetValue(subscribers) ? 0 : 1;
});
return await root.Parse(args).InvokeAsync();

/// <summary>The program.</summary>
internal static partial class Program
{
    private static readonly TimeSpan ScreensBegin = TimeSpan.FromSeconds(5);   // until a page's scripts are compiled

    private static string InWords(IReadOnlyList<double> delays)
    {
        double Share(double share) => delays[(int)Math.Min(delays.Count - 1, Math.Ceiling(share * delays.Count))];
        return string.Create(CultureInfo.InvariantCulture, $"delay in ms: median {Share(0.5):0.00}, 99 % {Share(0.99):0.00}, 99.9 % {Share(0.999):0.00}, longest {delays[^1]:0.00}");
    }
}
