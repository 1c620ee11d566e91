using System.CommandLine;
using System.Net;
using System.Text.Json;
using Handspun.Archives;
using Handspun.Filing;
using Handspun.Http;
using Handspun.Jobs.Archives;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Store;
using Handspun.Photos;
using Handspun.Pictures.Report;
using Handspun.Reports;
using Handspun.Station;
using Handspun.Wire;

namespace Handspun.Commands;

/// <summary>The commands that write what a job came to: <c>report</c>, <c>records</c>, <c>history</c>, <c>pack</c>; and <c>unpack</c>, which takes an archive in.</summary>
internal static class JobFileCommands
{
    private static readonly Option<string> Data = new("--data") { Description = "The data folder.", HelpName = "DIR", DefaultValueFactory = _ => DataFolder.Default };

    /// <summary><c>handspun report</c>.</summary>
    public static Command CreateReport()
    {
        var (job, output, json) = (JobArgument(), Output("The PDF to write; otherwise job-NUMBER.pdf here."), new Option<bool>("--json") { Description = "Print what the report says as JSON, and write no file." });
        var paper = new Option<string?>("--paper") { Description = "'a4' or 'letter'; otherwise what goes with the shop's unit.", HelpName = "PAPER" };
        paper.AcceptOnlyFromAmong([.. PaperSize.All.Select(known => known.Name)]);
        var command = new Command("report", "Write a job's report as a PDF: a page for the customer, then the evidence.") { job, output, paper, json, Data };
        command.SetAction((parsed, stopping) => WithJobAsync(parsed, job, (found, options) =>
        {
            var desk = new ReportDesk(new RecordFolder(options), new PhotoFolder(options), options, TimeProvider.System);
            if (parsed.GetValue(json))
            {
                Console.WriteLine(JsonSerializer.Serialize(desk.Of(found), WireJson.Options));
                return;
            }

            var pdf = desk.Pdf(found, PaperSize.Find(parsed.GetValue(paper) ?? "") ?? desk.UsualPaper);
            Write(parsed.GetValue(output) ?? $"job-{found.Number}.pdf", into => into.Write(pdf));
        }, stopping));
        return command;
    }

    /// <summary><c>handspun records</c>.</summary>
    public static Command CreateRecords()
    {
        var (job, json, csv) = (JobArgument(), new Option<bool>("--json") { Description = "Print JSON, one record a line." }, new Option<bool>("--csv") { Description = "Print CSV, a row a record; lengths in millimetres." });
        var command = new Command("records", "List the records of a job, point by point, oldest first.") { job, json, csv, Data };
        command.SetAction((parsed, stopping) => WithJobAsync(parsed, job, (found, options) =>
        {
            if (parsed.GetValue(csv))
            {
                RecordsCsv.Write(RecordRow.Of(found, options.Unit), Console.Out);
                return;
            }

            foreach (var (point, record) in found.InOrder.SelectMany(point => point.NewestFirst.Reverse().Select(record => (point, record))))
            {
                Console.WriteLine(parsed.GetValue(json)
                    ? JsonSerializer.Serialize(ResultMessage.Of(found.Number, point.Code, record, options.Unit), WireJson.Options)
                    : JobLines.Of(found, point, record, options.Unit));
            }
        }, stopping));
        return command;
    }

    /// <summary><c>handspun history</c>.</summary>
    public static Command CreateHistory()
    {
        var (job, json) = (JobArgument(), new Option<bool>("--json") { Description = "Print JSON." });
        var command = new Command("history", "Tell what was measured on the bike of a job over the years, and where it lies among the shop's other bikes of its make and model.") { job, json, Data };
        command.SetAction((parsed, stopping) =>
        {
            var options = OptionsOf(parsed);
            return StoreAtHand.UseAsync<HistoryStore>(options.Data, async store =>
            {
                try
                {
                    var number = parsed.GetRequiredValue(job);
                    var found = await store.OfBikeAsync(number, stopping);
                    var kind = await store.OfKindAsync(found, stopping);
                    foreach (var line in parsed.GetValue(json) ? [JsonSerializer.Serialize(HistoryMessage.Of(found, kind), WireJson.Options)] : HistoryLines.Of(ViewOfHistory.Of(number, found, kind, options.Unit)))
                    {
                        Console.WriteLine(line);
                    }

                    return 0;
                }
                catch (JobNotFoundException e)
                {
                    throw new StationTroubleException(e.Message);
                }
            }, stopping);
        });
        return command;
    }

    /// <summary><c>handspun pack</c>.</summary>
    public static Command CreatePack()
    {
        var (job, output) = (JobArgument(), Output("The archive to write; otherwise job-NUMBER.zip here."));
        var command = new Command("pack", "Pack everything of a job into one archive (ZIP): records with their raw bytes and pictures, photos, book. Another station takes it in with 'unpack'.") { job, output, Data };
        command.SetAction((parsed, stopping) => WithJobAsync(
            parsed,
            job,
            (found, options) => Write(parsed.GetValue(output) ?? $"job-{found.Number}.zip", into => JobArchive.Write(found, options.Data, options.Unit, TimeProvider.System.GetUtcNow(), into)),
            stopping));
        return command;
    }

    /// <summary><c>handspun unpack</c>.</summary>
    public static Command CreateUnpack()
    {
        var file = new Argument<string>("FILE") { Description = "The archive." };
        var number = new Option<string?>("--as") { Description = "The number that the job gets here, where its own is taken.", HelpName = "NUMBER" };
        var json = new Option<bool>("--json") { Description = "Print the job as JSON." };
        var command = new Command("unpack", "Take in a job that another station packed: all of it, or nothing.") { file, number, json, Data };
        command.SetAction((parsed, stopping) =>
        {
            var options = OptionsOf(parsed);
            return StoreAtHand.UseAsync<JobStore>(options.Data, async store =>
            {
                try
                {
                    var job = await new ArchiveIntake(store, options.Data).TakeAsync(parsed.GetRequiredValue(file), parsed.GetValue(number), stopping);
                    Console.WriteLine(parsed.GetValue(json)
                        ? JsonSerializer.Serialize(JobMessage.Of(job, options.Unit), WireJson.Options)
                        : $"Job {job.Number} is here: {job.Bike.Title}, with {Counted(job.Points.Sum(point => point.Records.Count))}.");
                    return 0;
                }
                catch (ArchiveRefusalException e)
                {
                    throw new StationTroubleException(e.IsThere && parsed.GetValue(number) is null ? $"{e.Message} With --as, it gets another number." : e.Message);
                }
            }, stopping);
        });
        return command;
    }

    private static string Counted(int records) => records == 1 ? "one record" : $"{records} records";

    private static Argument<string> JobArgument() => new("JOB") { Description = "The job's number; 'handspun jobs' lists them." };

    private static Option<string?> Output(string description) => new("--output", "-o") { Description = description, HelpName = "FILE" };

    private static StationOptions OptionsOf(ParseResult parsed)
    {
        var data = DataFolder.LookInto(parsed.GetRequiredValue(Data));
        var nowhere = new IPEndPoint(IPAddress.Loopback, 0);
        return new() { Data = data, Http = nowhere, Mqtt = nowhere, Gauges = [], Shop = new(ShopFile.Read(data.Shop)) };
    }

    private static Task<int> WithJobAsync(ParseResult parsed, Argument<string> job, Action<Job, StationOptions> work, CancellationToken stopping)
    {
        var options = OptionsOf(parsed);
        return StoreAtHand.UseAsync<JobStore>(options.Data, async store =>
        {
            var number = parsed.GetRequiredValue(job);
            work(await store.FindAsync(number, stopping) ?? throw new StationTroubleException(JobNotFoundException.Job(number).Message), options);
            return 0;
        }, stopping);
    }

    // Written beside and put in its place when it is whole.
    private static void Write(string file, Action<Stream> write)
    {
        var part = file + ".part";
        try
        {
            using (var into = File.Create(part))
            {
                write(into);
            }

            File.Move(part, file, overwrite: true);
            Console.WriteLine(file);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new StationTroubleException($"{file} cannot be written ({e.Message}): give another file with --output.");
        }
    }
}
