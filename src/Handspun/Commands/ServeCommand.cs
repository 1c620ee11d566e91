using System.CommandLine;
using Handspun.Labels;
using Handspun.Screens;
using Handspun.Station;

namespace Handspun.Commands;

/// <summary><c>handspun serve</c>: the station, until it is told to stop.</summary>
internal static class ServeCommand
{
    /// <summary>The command.</summary>
    public static Command Create()
    {
        var shared = new StationCommandOptions(DataFolder.Default);
        var gauges = new Option<string[]>("--gauge")
        {
            Description = "A gauge: its name, its profile and its port, such as pinion=text-line@/dev/ttyUSB0. May be given several times; gauges.toml in the data folder names more.",
            HelpName = "NAME=PROFILE@PORT",
            DefaultValueFactory = _ => [],
        };
        var command = new Command("serve", "Run the station: listen to the gauges, serve the pages and the broker, keep the records.") { gauges };
        shared.AddTo(command);
        command.SetAction(async (parsed, stopping) =>
        {
            using var data = shared.TakeFolder(parsed);
            var named = parsed.GetRequiredValue(gauges).Select(GaugeOption.Parse).ToList();
            var options = shared.Read(parsed, data, [.. named, .. GaugeOption.ReadFile(data.Gauges)]);
            await using var station = StationHost.Build(options);
            await StationHost.StartAsync(station, options, stopping);
            Announce(StationAddresses.Of(station), options);
            AnnouncePairing(station.Services.GetRequiredService<PairingDesk>(), StationAddresses.Of(station));
            await station.WaitForShutdownAsync(stopping);
            return 0;
        });
        return command;
    }

    private static void AnnouncePairing(PairingDesk desk, StationAddresses addresses)
    {
        if (desk.Offer is not var (_, address))
        {
            return;
        }

        Console.WriteLine($"Screens: {addresses.Screens}");
        Console.WriteLine($"Pair:    {address} once, within {PairingCode.Life.TotalMinutes:0} minutes; {addresses.Pages}screens has the next code");
        if (!Console.IsOutputRedirected)
        {
            Console.WriteLine(QrSign.Terminal(address.ToString()));
        }

        Console.WriteLine("What goes over the shop's network is not encrypted: use a wifi of the shop's own.");
    }

    private static void Announce(StationAddresses addresses, StationOptions options)
    {
        Console.WriteLine($"Pages:  {addresses.Pages}");
        Console.WriteLine($"Broker: mqtt://127.0.0.1:{addresses.BrokerPort}");
        Console.WriteLine($"Data:   {options.Data.Root}");
        Console.WriteLine(options.Gauges.Count == 0
            ? $"Gauges: none yet; name one with --gauge NAME=PROFILE@PORT or in {options.Data.Gauges}"
            : "Gauges: " + string.Join(", ", options.Gauges.Select(gauge => $"{gauge.Name} ({gauge.Profile.Name} at {gauge.Port})")));
    }
}
