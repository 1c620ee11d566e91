using System.CommandLine;
using System.Text.Json;
using Handspun.Checks;
using Handspun.Gauges.Links;
using Handspun.Gauges.Profiles;
using Handspun.Jobs.Plans;
using Handspun.Station;
using Handspun.Terminal;
using Handspun.Wire;

namespace Handspun.Commands;

/// <summary><c>handspun check</c>: goes through all that a station needs, and says what to do where something fails.</summary>
internal static class CheckCommand
{
    private const int Width = 100;
    private const int SomethingFails = 1;

    /// <summary>The command.</summary>
    public static Command Create()
    {
        var shared = new StationCommandOptions(DataFolder.Default);
        var json = new Option<bool>("--json") { Description = "Print JSON, one object a line: subject, mark (ok, mind, failing), sentence." };
        var command = new Command("check", "Go through rights, profiles, gauges, store, addresses, disk space and clock. Exit status 1 where something must be mended.") { json };
        shared.AddTo(command);
        command.SetAction(async (parsed, stopping) =>
        {
            var lines = await AllAsync(shared.LookIntoFolder(parsed), shared, parsed, stopping);
            foreach (var line in parsed.GetValue(json) ? lines.Select(InJson) : InWords(lines, Paint.OfConsole()))
            {
                Console.WriteLine(line);
            }

            return lines.Any(line => line.Mark == CheckMark.Failing) ? SomethingFails : 0;
        });
        return command;
    }

    private static async Task<IReadOnlyList<CheckLine>> AllAsync(DataFolder data, StationCommandOptions shared, ParseResult parsed, CancellationToken stopping)
    {
        var (shelf, time, runs) = (new ProfileShelf(data.Profiles, ProfileShelf.ShippedFolder), TimeProvider.System, data.IsTaken);
        return
        [
            FolderChecks.Rights(data),
            FolderChecks.Space(data),
            ClockCheck.Of(data, time),
            ProfileChecks.Shop(data),
            .. ProfileChecks.All(shelf),
            .. PlanChecks.All(new PlanShelf(data.Plans, PlanShelf.ShippedFolder)),
            .. new GaugeChecks(new DeviceRoots()).All(data, shelf),
            .. await GaugeBookCheck.OfAsync(data, time, stopping),
            await StoreCheck.OfAsync(data, stopping),
            await AddressChecks.OfAsync("Pages", shared.HttpOf(parsed), "--http", runs, time, stopping),
            await AddressChecks.OfAsync("Broker", shared.MqttOf(parsed), "--mqtt-port", runs, time, stopping),
        ];
    }

    private static string InJson(CheckLine line) => JsonSerializer.Serialize(new CheckMessage(line.Subject, line.Code, line.Sentence), WireJson.Options);

    private static IEnumerable<string> InWords(IReadOnlyList<CheckLine> lines, Paint paint)
    {
        var widest = lines.Max(line => line.Subject.Length);
        foreach (var line in lines)
        {
            var sign = line.Mark switch
            {
                CheckMark.Good => paint.Good("✓"),
                CheckMark.Mind => paint.Mind("!"),
                _ => paint.Bad("✗"),
            };
            var rows = Columns.Wrap(line.Sentence, Width - widest, new string(' ', widest + 4)).ToList();
            yield return $"{sign} {line.Subject.PadRight(widest)}  {rows[0]}";
            foreach (var row in rows.Skip(1))
            {
                yield return row;
            }
        }

        yield return "";
        yield return lines.Count(line => line.Mark == CheckMark.Failing) switch
        {
            0 => paint.Good("All that a station needs is there."),
            1 => paint.Bad("One thing must be mended; its line says how."),
            var several => paint.Bad($"{several} things must be mended; their lines say how."),
        };
    }

    private sealed record CheckMessage(string Subject, string Mark, string Sentence);
}
