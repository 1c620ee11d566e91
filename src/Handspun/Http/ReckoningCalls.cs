using Handspun.Jobs.Lengths;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Records;
using Handspun.Jobs.Store;
using Handspun.Metrology.Quantities;
using Handspun.Pages;
using Handspun.Reckonings;
using Handspun.Station;
using Handspun.Wire;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Handspun.Http;

/// <summary>Reckonings of the trade, as calls and as a page. Nothing is kept: what was typed stands in the address.</summary>
internal static class ReckoningCalls
{
    private const string ValveLift = "valve_lift";

    /// <summary>Maps the calls.</summary>
    public static void MapReckonings(this IEndpointRouteBuilder calls)
    {
        calls.MapGet("/reckonings", () => ReckoningSheets.All.Select(sheet => new
        {
            reckoning = sheet.Code,
            sheet.Title,
            keys = sheet.Fields(LengthUnit.Millimetre).Select(field => field.Name),
        }));
        calls.MapGet("/reckonings/{reckoning}", (string reckoning, HttpRequest request, StationOptions options) =>
        {
            var sheet = ReckoningSheets.Find(reckoning)
                ?? throw new JobNotFoundException($"There is no reckoning '{reckoning}': give one of {string.Join(", ", ReckoningSheets.All.Select(known => known.Code))}.");
            var typed = Typed(request);
            var known = sheet.Fields(options.Unit).Select(field => field.Name).Append("unit").ToArray();
            return typed.Keys.FirstOrDefault(key => !known.Contains(key)) is { } strange
                ? throw new RequestSentenceException($"Nothing is asked under '{strange}': give {string.Join(", ", known)}.")
                : ReckoningMessage.Of(reckoning, ReckoningSheets.Work(sheet, typed, UnitOf(typed, options.Unit)), ReckoningSheets.Shown(UnitOf(typed, options.Unit)));
        });
    }

    /// <summary>Maps the page.</summary>
    public static void MapReckoningPage(this IEndpointRouteBuilder routes) => routes.MapGet(
        "/reckonings",
        async (HttpRequest request, JobStore store, StationOptions options, CancellationToken cancellation) =>
        {
            var typed = Typed(request);
            var job = typed.GetValueOrDefault("job") is { Length: > 0 } number ? await store.GetAsync(number, cancellation) : null;
            var unit = UnitOf(typed, options.Unit);
            var asked = ReckoningSheets.Find(typed.GetValueOrDefault("reckoning"));
            var lift = job is null ? null : LiftOf(job, unit);
            return new RazorComponentResult<ReckoningPage>(new
            {
                Model = new ReckoningPageView(job?.Number, LengthText.Symbol(unit), [.. ReckoningSheets.All.Select(sheet => View(sheet, sheet == asked ? typed : null, lift, unit))]),
            });
        });

    private static ReckoningView View(IReckoningSheet sheet, Dictionary<string, string?>? typed, string? lift, LengthUnit unit)
    {
        var answer = ReckoningSheets.Work(sheet, typed ?? [], unit);
        return new(
            sheet.Code,
            sheet.Title,
            IsAsked: typed is not null,
            [.. sheet.Fields(unit).Select(field => new SetupFieldView(
                field.Name,
                field.Label,
                typed?.GetValueOrDefault(field.Name) ?? (field.Name == ValveLift ? lift : null) ?? "",
                field.Hint,
                field.Choices is null ? null : [.. field.Choices.Select(choice => new Choice(choice, choice))]))],
            [.. answer.Lines.Select(line => new WorkedView(line.Formula, line.Filled(ReckoningSheets.Shown(unit)), line == answer.Answer))],
            typed is null ? null : answer.Missing,
            answer.Cautions);
    }

    private static Dictionary<string, string?> Typed(HttpRequest request) => request.Query.ToDictionary(pair => pair.Key, pair => (string?)pair.Value.ToString());

    private static LengthUnit UnitOf(Dictionary<string, string?> typed, LengthUnit usual) =>
        typed.GetValueOrDefault("unit") switch { "in" => LengthUnit.Inch, "mm" => LengthUnit.Millimetre, _ => usual };

    // The valve that opens furthest leaves the least room.
    private static string? LiftOf(Job job, LengthUnit unit) =>
        job.Points.Select(point => (point.Counting?.Figures as LiftFigures)?.ValveLiftMillimetres).Max() is { } most ? LengthText.Of(Length.FromMillimetres(most), unit) : null;
}
