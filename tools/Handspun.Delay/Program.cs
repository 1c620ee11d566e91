using System.CommandLine;
using System.Globalization;
using Handspun.Delay;

var gauges = new Option<int>("--gauges") { Description = "How many gauges send at once.", DefaultValueFactory = _ => 1 };
var rate = new Option<double>("--rate") { Description = "Readings a second of each.", DefaultValueFactory = _ => 100 };
var seconds = new Option<double>("--seconds") { Description = "How long they send.", DefaultValueFactory = _ => 30 };
var subscribers = new Option<int>("--subscribers") { Description = "How many clients the broker serves; the delay is that of the last one.", DefaultValueFactory = _ => 1 };
var root = new RootCommand("How long a reading takes from the last byte at a serial port to a subscriber of the broker, through the real service.") { gauges, rate, seconds, subscribers };
root.SetAction(async (parsed, stopping) =>
{
    await using var station = await StationUnderTest.StartAsync(parsed.GetValue(gauges), stopping);
    await using var ears = await Ears.ListenAsync(station, parsed.GetValue(subscribers), stopping);
    await station.SendAsync(parsed.GetValue(rate), TimeSpan.FromSeconds(parsed.GetValue(seconds)), stopping);
    await ears.QuietAsync(stopping);
    var delays = ears.DelaysMilliseconds();
    double Share(double share) => delays[(int)Math.Min(delays.Count - 1, Math.Ceiling(share * delays.Count))];
    Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"sent {station.Sent}, heard {ears.Heard} by {parsed.GetValue(subscribers)} subscribers"));
    Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"delay in ms: median {Share(0.5):0.00}, 99 % {Share(0.99):0.00}, 99.9 % {Share(0.999):0.00}, longest {delays[^1]:0.00}"));
    return ears.Heard == station.Sent * parsed.GetValue(subscribers) ? 0 : 1;
});
return await root.Parse(args).InvokeAsync();
