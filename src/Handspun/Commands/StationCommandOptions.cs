using System.CommandLine;
using System.Net;
using Handspun.Gauges.Profiles;
using Handspun.Jobs.Lengths;
using Handspun.Station;

namespace Handspun.Commands;

/// <summary>The options that every command takes which runs a station.</summary>
internal sealed class StationCommandOptions
{
    private const int DefaultMqttPort = 1883;

    private readonly Option<string?> _data;
    private readonly Option<string> _http = new("--http") { Description = "Where the pages are served; a loopback address. Port 0 lets the system choose.", HelpName = "URL", DefaultValueFactory = _ => HttpAddress.Default };
    private readonly Option<int> _mqtt = new("--mqtt-port") { Description = "Where the broker listens, on loopback. 0 lets the system choose.", HelpName = "N", DefaultValueFactory = _ => DefaultMqttPort };
    private readonly Option<string?> _screens = new("--screens") { Description = "Also serve screens of the shop's network, at this address of this machine's there, such as http://192.168.1.20:5080; each must be paired. Otherwise as shop.toml says, else this machine only.", HelpName = "URL" };
    private readonly Option<string?> _unit = new("--unit") { Description = "Lengths on screens in 'in' or 'mm'; otherwise as shop.toml in the data folder says, else in.", HelpName = "UNIT" };

    /// <summary>The options, with the folder that is used where none is named.</summary>
    public StationCommandOptions(string defaultFolder)
    {
        DefaultFolder = defaultFolder;
        _data = new Option<string?>("--data") { Description = $"Where everything is kept (default: {defaultFolder}).", HelpName = "DIR" };
        _unit.AcceptOnlyFromAmong("in", "mm");
    }

    private string DefaultFolder { get; }

    /// <summary>Adds them to a command.</summary>
    public void AddTo(Command command)
    {
        command.Add(_data);
        command.Add(_http);
        command.Add(_mqtt);
        command.Add(_screens);
        command.Add(_unit);
    }

    /// <summary>Whether a port was named, or may be another one where the usual one is taken.</summary>
    public bool PortsAreGiven(ParseResult parsed) => parsed.GetResult(_http) is { Implicit: false } || parsed.GetResult(_mqtt) is { Implicit: false };

    /// <summary>The data folder, only to be looked into.</summary>
    public DataFolder LookIntoFolder(ParseResult parsed) => DataFolder.LookInto(parsed.GetValue(_data) ?? DefaultFolder);

    /// <summary>Where the pages are served.</summary>
    public IPEndPoint HttpOf(ParseResult parsed) => HttpAddress.Parse(parsed.GetRequiredValue(_http));

    /// <summary>Where the broker listens.</summary>
    public IPEndPoint MqttOf(ParseResult parsed) => MqttAddress(parsed.GetValue(_mqtt));

    /// <summary>Takes the data folder.</summary>
    public DataFolder TakeFolder(ParseResult parsed) => DataFolder.Take(parsed.GetValue(_data) ?? DefaultFolder);

    /// <summary>Reads them, finds the gauges, and tells all that is wrong.</summary>
    public StationOptions Read(ParseResult parsed, DataFolder data, IReadOnlyList<GaugeOption> gauges) => Of(parsed, data, gauges, ShopFile.Read(data.Shop));

    private StationOptions Of(ParseResult parsed, DataFolder data, IReadOnlyList<GaugeOption> gauges, ShopFile shop) => new()
    {
        Data = data,
        Http = HttpOf(parsed),
        Mqtt = MqttOf(parsed),
        Gauges = GaugeOption.Resolve(gauges, new ProfileShelf(data.Profiles, ProfileShelf.ShippedFolder)),
        Shop = new(shop, LengthUnits.Find(parsed.GetValue(_unit))),
        Screens = (parsed.GetValue(_screens) ?? shop.Screens) is { } screens ? HttpAddress.ParseScreens(screens) : null,
    };

    private static IPEndPoint MqttAddress(int port) => port is >= 0 and <= IPEndPoint.MaxPort
        ? new IPEndPoint(IPAddress.Loopback, port)
        : throw new StationTroubleException($"--mqtt-port {port} is no port: give a number from 0 to {IPEndPoint.MaxPort}.", StationTroubleException.Usage);
}
