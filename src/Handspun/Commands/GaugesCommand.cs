using System.CommandLine;
using System.Text.Json;
using Handspun.Finding;
using Handspun.Gauges.Finding;
using Handspun.Gauges.Links;
using Handspun.Gauges.Listening;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Trying;
using Handspun.Jobs.Lengths;
using Handspun.Station;
using Handspun.Terminal;
using Handspun.Wire;

namespace Handspun.Commands;

/// <summary><c>handspun gauges</c>: what is plugged in, what it sends, and which profile suits.</summary>
internal sealed class GaugesCommand
{
    private const int NothingSuits = 1;
    private static readonly TimeSpan OnScreenEvery = TimeSpan.FromMilliseconds(200);
    private static readonly TimeSpan InLinesEvery = TimeSpan.FromSeconds(1);

    private readonly Option<bool> _watch = new("--watch") { Description = "Show live readings of the shop's gauges, and of those named with --gauge." };
    private readonly Option<string?> _try = new("--try") { Description = "Listen at a port and propose the profiles that make readings of what is heard, best first.", HelpName = "PORT" };
    private readonly Option<string?> _record = new("--record") { Description = "With --try, or with --watch of one gauge: keep the raw bytes in this file, in the journal's format.", HelpName = "FILE" };
    private readonly Option<string[]> _gauges = new("--gauge") { Description = "With --watch: a gauge, such as pinion=text-line@/dev/ttyUSB0.", HelpName = "NAME=PROFILE@PORT", DefaultValueFactory = _ => [] };
    private readonly Option<double> _seconds = new("--seconds") { Description = "With --watch: end after so long. With --try: listen so long in each way (3 where nothing is said).", HelpName = "N" };
    private readonly Option<string> _unit = new("--unit") { Description = "Lengths in 'in' or 'mm' where the output is text.", HelpName = "UNIT", DefaultValueFactory = _ => "in" };
    private readonly Option<string> _data = new("--data") { Description = "The folder with the shop's gauges and profiles.", HelpName = "DIR", DefaultValueFactory = _ => DataFolder.Default };
    private readonly Option<bool> _json = new("--json") { Description = "Print JSON, one object a line; lengths in millimetres." };

    private GaugesCommand() => _unit.AcceptOnlyFromAmong("in", "mm");

    /// <summary>The command.</summary>
    public static Command Create()
    {
        var options = new GaugesCommand();
        var command = new Command("gauges", "List what is plugged in, watch what it sends, or find the profile that suits a gauge. Exit status 1 where --try finds none.")
        {
            options._watch, options._try, options._record, options._gauges, options._seconds, options._unit, options._data, options._json,
        };
        command.SetAction(options.RunAsync);
        return command;
    }

    private Task<int> RunAsync(ParseResult parsed, CancellationToken stopping)
    {
        var data = DataFolder.LookInto(parsed.GetRequiredValue(_data));
        var seconds = parsed.GetValue(_seconds);
        if (parsed.GetResult(_seconds) is not null && seconds is not (> 0 and <= 86_400))
        {
            throw new StationTroubleException("--seconds is a number above 0 and up to 86400.", StationTroubleException.Usage);
        }

        return (parsed.GetValue(_try), parsed.GetValue(_watch), parsed.GetValue(_record)) switch
        {
            ({ }, true, _) => throw new StationTroubleException("--try and --watch do not go together: give one of them.", StationTroubleException.Usage),
            ({ } port, false, _) => TryAsync(parsed, port, data, stopping),
            (null, true, _) => WatchAsync(parsed, data, stopping),
            (null, false, { }) => throw new StationTroubleException("--record goes with --try PORT, or with --watch and one gauge: add one of them.", StationTroubleException.Usage),
            _ => Task.FromResult(List(parsed, data)),
        };
    }

    private int List(ParseResult parsed, DataFolder data)
    {
        var ports = new PluggedPorts(new DeviceRoots()).All();
        var gauges = GaugeOption.ReadFile(data.Gauges);
        var lines = parsed.GetValue(_json)
            ? ports.Select(port => JsonSerializer.Serialize(PluggedText.MessageOf(port, gauges), WireJson.Options))
            : PluggedText.Of(ports, gauges, Paint.OfConsole());
        foreach (var line in lines)
        {
            Console.WriteLine(line);
        }

        return 0;
    }

    private async Task<int> TryAsync(ParseResult parsed, string where, DataFolder data, CancellationToken stopping)
    {
        if (!GaugePort.TryParse(where, out var port))
        {
            throw new StationTroubleException($"--try {where} is no port. {GaugeOption.Ports}", StationTroubleException.Usage);
        }

        var (asJson, paint) = (parsed.GetValue(_json), Paint.OfConsole());
        var span = TimeSpan.FromSeconds(parsed.GetResult(_seconds) is null ? 3 : parsed.GetValue(_seconds));
        var shelf = new ProfileShelf(data.Profiles, ProfileShelf.ShippedFolder);
        var run = new TrialRun(new ListeningTrial(new LinkOpener(TimeProvider.System), TimeProvider.System));
        if (!asJson)
        {
            Console.WriteLine(paint.Strong($"Listening at {port}"));
        }

        await run.ListenAsync(port!, Sound(shelf), span, heard => Tell(asJson ? null : TrialText.Way(heard, port!, paint)), stopping);
        var proposals = run.Proposals;
        if (parsed.GetValue(_record) is { } file)
        {
            run.Record(file, port!);
        }

        if (asJson)
        {
            Console.WriteLine(JsonSerializer.Serialize(
                new TrialMessage(port!.ToString()!, [.. run.Heard.Select(heard => HeardMessage.Of(heard, port))], [.. proposals.Select(ProposalMessage.Of)]),
                WireJson.Options));
        }
        else
        {
            Console.WriteLine();
            foreach (var line in TrialText.Proposals(proposals, run.Heard.Any(heard => heard.Bytes > 0), port!, UnitOf(parsed), paint))
            {
                Console.WriteLine(line);
            }
        }

        return proposals is [{ Suits: true }, ..] ? 0 : NothingSuits;
    }

    private async Task<int> WatchAsync(ParseResult parsed, DataFolder data, CancellationToken stopping)
    {
        var named = parsed.GetRequiredValue(_gauges).Select(GaugeOption.Parse).ToList();
        var gauges = GaugeOption.Resolve([.. named, .. named.Count > 0 ? [] : GaugeOption.ReadFile(data.Gauges)], new ProfileShelf(data.Profiles, ProfileShelf.ShippedFolder));
        var record = parsed.GetValue(_record);
        if (gauges.Count == 0 || (record is not null && gauges.Count > 1))
        {
            throw new StationTroubleException(
                gauges.Count == 0 ? $"No gauge is named: give one with --gauge NAME=PROFILE@PORT, or name it in {data.Gauges}." : "--record keeps the bytes of one gauge: name that one with --gauge.",
                StationTroubleException.Usage);
        }

        using var ending = CancellationTokenSource.CreateLinkedTokenSource(stopping);
        if (parsed.GetResult(_seconds) is not null)
        {
            ending.CancelAfter(TimeSpan.FromSeconds(parsed.GetValue(_seconds)));
        }

        using var watch = new GaugeWatch(gauges, TimeProvider.System);
        var asJson = parsed.GetValue(_json);
        var screen = new LiveLines(Console.Out, redraws: !asJson && !Console.IsOutputRedirected);
        await watch.RunAsync(screen.Redraws ? OnScreenEvery : InLinesEvery, states => screen.Show(asJson ? Json(states, watch) : WatchText.Of(states, watch.Clock, UnitOf(parsed), Paint.OfConsole())), ending.Token);
        if (record is not null)
        {
            watch.Record(record);
        }

        return 0;
    }

    private static IEnumerable<string> Json(IReadOnlyList<(GaugeState State, double? Millimetres)> states, GaugeWatch watch) => states.Select(gauge => JsonSerializer.Serialize(
        new WatchMessage(GaugeStateMessage.Of(gauge.State, watch.Clock, notSent: 0), gauge.Millimetres, WatchText.AgeOf(gauge.State, watch.Clock)?.TotalSeconds),
        WireJson.Options));

    private LengthUnit UnitOf(ParseResult parsed) => parsed.GetValue(_unit) == "mm" ? LengthUnit.Millimetre : LengthUnit.Inch;

    // A profile that does not hold is told by 'handspun check'; here it only does not come into question.
    private static IEnumerable<GaugeProfile> Sound(ProfileShelf shelf)
    {
        foreach (var name in shelf.Names)
        {
            GaugeProfile profile;
            try
            {
                profile = shelf.Find(name);
            }
            catch (ProfileException)
            {
                continue;
            }

            yield return profile;
        }
    }

    private static void Tell(string? line)
    {
        if (line is not null)
        {
            Console.WriteLine(line);
        }
    }
}
