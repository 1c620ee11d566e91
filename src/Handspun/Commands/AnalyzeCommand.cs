using System.CommandLine;
using System.Text.Json;
using Handspun.Analysis;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Limits;
using Handspun.Station;
using Handspun.Wire;

namespace Handspun.Commands;

/// <summary><c>handspun analyze</c>: measures captures that lie in files, by the same method as the live ones.</summary>
internal static class AnalyzeCommand
{
    private const int SomeRejected = 1;

    /// <summary>The command.</summary>
    public static Command Create()
    {
        var files = new Argument<string[]>("FILE") { Description = "Journals, or CSV with the columns time_s,channel,value.", Arity = ArgumentArity.OneOrMore };
        files.Validators.Add(result =>
        {
            foreach (var mistyped in result.Tokens.Where(token => token.Value.StartsWith('-')))
            {
                result.AddError($"There is no option '{mistyped.Value}'; a file of that name is written ./{mistyped.Value}.");
            }
        });
        var json = new Option<bool>("--json") { Description = "Print one JSON object a line, one a file, in order; lengths in millimetres." };
        var atMost = new Option<string?>("--at-most") { Description = "Hold the runout against this limit, with its unit, such as '0.005 in'; otherwise against the one that the point comes with.", HelpName = "LENGTH" };
        var atLeast = new Option<string?>("--at-least") { Description = "The lower bound of the limit, with its unit.", HelpName = "LENGTH" };
        var unit = new Option<string>("--unit") { Description = "Lengths in 'in' or 'mm' where the output is text.", HelpName = "UNIT", DefaultValueFactory = _ => "in" };
        unit.AcceptOnlyFromAmong("in", "mm");
        var command = new Command("analyze", "Measure captures that lie in files. Exit status 0 when every file got an answer, 1 when one was rejected, 2 on wrong usage.") { files, json, atMost, atLeast, unit };
        command.SetAction((parsed, stopping) =>
        {
            var limit = LimitOf(parsed.GetValue(atLeast), parsed.GetValue(atMost));
            var shown = parsed.GetValue(unit) == "mm" ? LengthUnit.Millimetre : LengthUnit.Inch;
            var rejected = false;
            foreach (var file in parsed.GetRequiredValue(files))
            {
                stopping.ThrowIfCancellationRequested();
                var answer = Answer(file, limit);
                rejected |= answer.Status == "rejected";
                Console.WriteLine(parsed.GetValue(json) ? JsonSerializer.Serialize(answer, WireJson.Options) : AnalysisText.Of(answer, shown));
            }

            return Task.FromResult(rejected ? SomeRejected : 0);
        });
        return command;
    }

    private static AnalysisAnswer Answer(string file, Limit? limit)
    {
        try
        {
            return AnalysisAnswer.Of(file, CaptureFile.Read(file), limit);
        }
        catch (CaptureFileException e)
        {
            return AnalysisAnswer.Rejected(file, e.Message);
        }
    }

    private static Limit? LimitOf(string? atLeast, string? atMost)
    {
        var bounds = LimitBounds.Read(("--at-least", atLeast), ("--at-most", atMost));
        return bounds.Problem is { } problem ? throw new StationTroubleException(problem, StationTroubleException.Usage)
            : bounds.IsEmpty ? null
            : bounds.ToLimit("given on the command line", "the command line");
    }
}
