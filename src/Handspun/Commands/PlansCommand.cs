using System.CommandLine;
using System.Text.Json;
using Handspun.Jobs.Plans;
using Handspun.Jobs.Plans.Reading;
using Handspun.Station;
using Handspun.Wire;

namespace Handspun.Commands;

/// <summary><c>handspun plans</c>: the plans at hand, or whether a file is one.</summary>
internal static class PlansCommand
{
    /// <summary>The command.</summary>
    public static Command Create()
    {
        var files = new Argument<string[]>("FILE") { Description = "Plans to check before they go into the data folder's plans; otherwise all plans at hand are listed.", Arity = ArgumentArity.ZeroOrMore };
        var data = new Option<string>("--data") { Description = "The data folder, with the shop's own plans in plans/.", HelpName = "DIR", DefaultValueFactory = _ => DataFolder.Default };
        var json = new Option<bool>("--json") { Description = "Print JSON, one plan a line." };
        var command = new Command("plans", "List the plans that a job can take, or check the shop's own. Exit status 1 where one does not hold.") { files, data, json };
        command.SetAction((parsed, _) =>
        {
            var (plans, problems) = parsed.GetRequiredValue(files) is { Length: > 0 } named
                ? Check(named)
                : new PlanShelf(DataFolder.LookInto(parsed.GetRequiredValue(data)).Plans, PlanShelf.ShippedFolder).All();
            foreach (var plan in plans)
            {
                Console.WriteLine(parsed.GetValue(json)
                    ? JsonSerializer.Serialize(PlanMessage.Of(plan), WireJson.Options)
                    : $"{plan.Code}  {plan.Title}, {plan.Steps.Count} {(plan.Steps.Count == 1 ? "step" : "steps")}. {plan.About}".TrimEnd());
            }

            foreach (var problem in problems)
            {
                Console.Error.WriteLine(problem);
            }

            return Task.FromResult(problems.Count == 0 ? 0 : StationTroubleException.Machine);
        });
        return command;
    }

    private static (IReadOnlyList<Plan> Plans, IReadOnlyList<string> Problems) Check(string[] files)
    {
        var (plans, problems) = (new List<Plan>(), new List<string>());
        foreach (var file in files)
        {
            try
            {
                plans.Add(PlanReader.Read(Path.GetFileNameWithoutExtension(file), File.ReadAllText(file)));
            }
            catch (PlanException e)
            {
                problems.AddRange(e.Problems);
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                problems.Add($"{file} cannot be read ({e.Message}): mend its rights or give another.");
            }
        }

        return (plans, problems);
    }
}
