using System.CommandLine;
using System.Text.Json;
using Handspun.Http.Plans;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Plans;
using Handspun.Jobs.Store;
using Handspun.Jobs.Store.Finding;
using Handspun.Station;
using Handspun.Wire;

namespace Handspun.Commands;

/// <summary><c>handspun jobs</c>: lists jobs and opens them, beside a station that runs or without one.</summary>
internal static class JobsCommand
{
    private static readonly Option<string?> Find = new("--find") { Description = "Only jobs with all of these words in number, title, customer, make, model, year, VIN or plate.", HelpName = "WORDS" };
    private static readonly Option<int> Page = new("--page") { Description = $"Which page, of {JobSearch.MostPerPage} jobs each.", HelpName = "N", DefaultValueFactory = _ => 1 };

    private static readonly Option<string> Data = new("--data") { Description = "The data folder.", HelpName = "DIR", DefaultValueFactory = _ => DataFolder.Default };
    private static readonly Option<bool> Json = new("--json") { Description = "Print JSON, one job a line." };

    /// <summary>The command.</summary>
    public static Command Create()
    {
        var command = new Command("jobs", "List the newest jobs, and how far their plans are.") { Find, Page, Data, Json };
        command.SetAction((parsed, stopping) => WithStoreAsync(parsed, async (store, options) =>
        {
            var search = new JobSearch(parsed.GetValue(Find), parsed.GetValue(Page), JobSearch.MostPerPage);
            var found = search.Problem is { } problem ? throw new StationTroubleException(problem, StationTroubleException.Usage)
                : parsed.GetValue(Json) ? await store.SearchAsync(search, stopping)
                : await store.ListAsync(search, stopping);
            foreach (var job in found.Jobs)
            {
                Print(job, parsed, options);
            }

            if (search.Page < found.Pages)
            {
                await Console.Error.WriteLineAsync($"{found.Count} jobs in all: --page {search.Page + 1} goes on.");
            }

            return 0;
        }, stopping));
        command.Add(CreateOpen());
        command.Add(CreateShow());
        return command;
    }

    private static Command CreateOpen()
    {
        Option<string?> Text(string name, string description, string help) => new(name) { Description = description, HelpName = help };
        var (make, model, title) = (Text("--make", "Who made the bike.", "TEXT"), Text("--model", "What it is called.", "TEXT"), Text("--title", "What is to be done, in a few words.", "TEXT"));
        var (vin, customer, plan) = (Text("--vin", "Its VIN, where it is known.", "VIN"), Text("--customer", "Who brought it.", "TEXT"), Text("--plan", "The plan that the job takes a copy of; 'handspun plans' lists them. Without one, the runout of both shaft ends.", "PLAN"));
        var plate = Text("--plate", "Its number plate, where it is known.", "PLATE");
        var year = new Option<int?>("--year") { Description = "Its model year.", HelpName = "YEAR" };
        var odometer = new Option<int?>("--odometer") { Description = "What the odometer shows.", HelpName = "N" };
        var command = new Command("open", "Open a job.") { make, model, year, title, vin, plate, odometer, customer, plan, Data, Json };
        command.SetAction((parsed, stopping) => WithStoreAsync(parsed, async (store, options) =>
        {
            var order = new NewJob
            {
                Make = parsed.GetValue(make),
                Model = parsed.GetValue(model),
                Year = parsed.GetValue(year),
                Title = parsed.GetValue(title),
                Vin = parsed.GetValue(vin),
                Plate = parsed.GetValue(plate),
                Odometer = parsed.GetValue(odometer),
                Customer = parsed.GetValue(customer),
                Plan = parsed.GetValue(plan),
            };
            var shelf = new PlanShelf(options.Plans, PlanShelf.ShippedFolder);
            if (JobOpening.Problems(order, shelf, TimeProvider.System.GetLocalNow().Year, out var chosen) is { Count: > 0 } problems)
            {
                throw new StationTroubleException(string.Join(Environment.NewLine, problems.Select(problem => $"--{problem.Key}: {problem.Value}")), StationTroubleException.Usage);
            }

            Print(await store.OpenPlannedAsync(order, chosen, stopping), parsed, options);
            return 0;
        }, stopping));
        return command;
    }

    private static Command CreateShow()
    {
        var number = new Argument<string>("NUMBER") { Description = "The job's number." };
        var command = new Command("show", "Show one job: how its plan stands, its points with their records, findings and parts.") { number, Data, Json };
        command.SetAction((parsed, stopping) => WithStoreAsync(parsed, async (store, folder) =>
        {
            var asked = parsed.GetRequiredValue(number);
            var job = await store.FindAsync(asked, stopping) ?? throw new StationTroubleException(JobNotFoundException.Job(asked).Message);
            Print(job, parsed, folder);
            foreach (var line in parsed.GetValue(Json) ? [] : JobLines.Of(job, ShopFile.Read(folder.Shop).Unit))
            {
                Console.WriteLine(line);
            }

            return 0;
        }, stopping));
        return command;
    }

    private static Task<int> WithStoreAsync(ParseResult parsed, Func<JobStore, DataFolder, Task<int>> work, CancellationToken stopping)
    {
        var folder = DataFolder.LookInto(parsed.GetRequiredValue(Data));
        return StoreAtHand.UseAsync<JobStore>(folder, store => work(store, folder), stopping);
    }

    private static void Print(Job job, ParseResult parsed, DataFolder folder)
    {
        if (parsed.GetValue(Json))
        {
            Console.WriteLine(JsonSerializer.Serialize(JobMessage.Of(job, ShopFile.Read(folder.Shop).Unit), WireJson.Options));
            return;
        }

        var far = ViewsOfPlans.Summary(job) is { } summary ? $" ({summary})" : "";
        Console.WriteLine($"{job.Number}  {job.Bike.Title}: {job.Title}{far}");
    }
}
