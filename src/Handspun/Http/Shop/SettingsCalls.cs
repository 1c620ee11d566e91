using System.Globalization;
using Handspun.Jobs.Lengths;
using Handspun.Metrology.Quantities;
using Handspun.Pages;
using Handspun.Pages.Plans;
using Handspun.Pages.Shop;
using Handspun.SharedFiles;
using Handspun.ShopSettings;
using Handspun.Station;
using Handspun.Wire;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Handspun.Http.Shop;

/// <summary>The shop's settings, as a page and as calls.</summary>
internal static class SettingsCalls
{
    private static readonly Length Example = Length.FromInches(0.0031);

    /// <summary>Maps the calls.</summary>
    public static void MapSettings(this IEndpointRouteBuilder calls)
    {
        calls.MapGet("/settings", (SettingsDesk desk, HttpContext http) =>
        {
            var (settings, tag) = desk.Look();
            EntityTags.Tell(http, tag);
            return SettingsMessage.Of(settings, desk.Ways);
        });
        calls.MapPut("/settings", Results<Ok<SettingsMessage>, ValidationProblem> (SettingsRequest request, SettingsDesk desk, HttpContext http) =>
        {
            var (before, _) = desk.Look();
            if (request.Over(before).Read(out var problems) is not { } settings)
            {
                return TypedResults.ValidationProblem(problems.ToDictionary(problem => problem.Key, problem => new[] { problem.Value }), detail: string.Join(" ", problems.Values), title: "Not understood");
            }

            EntityTags.Tell(http, desk.Save(settings, EntityTags.Asked(http)));
            return TypedResults.Ok(SettingsMessage.Of(settings, desk.Ways));
        });
    }

    /// <summary>Maps the page.</summary>
    public static void MapSettingsPage(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/settings", (SettingsDesk desk, StationOptions options, string? saved = null) =>
        {
            var (settings, tag) = desk.Look();
            return Result(Page(desk, options, Typed(settings), new Dictionary<string, string>(), tag) with { IsSaved = saved is not null }, StatusCodes.Status200OK);
        }).ExcludeFromDescription();
        // The same-origin guard does for forms what a token would do.
        routes.MapPost("/settings", SaveAsync).DisableAntiforgery().ExcludeFromDescription();
    }

    /// <summary>A way to show lengths as a code, such as <c>in-4</c>.</summary>
    public static string CodeOf(LengthUnit unit) => string.Create(CultureInfo.InvariantCulture, $"{LengthText.Symbol(unit)}-{unit.Places}");

    private static async Task<IResult> SaveAsync(HttpRequest request, SettingsDesk desk, StationOptions options)
    {
        var form = Plans.PageDesk.StateOf(await request.ReadFormAsync(request.HttpContext.RequestAborted));
        var (unit, places) = form.Of("lengths").Split('-') is [var symbol, var decimals] ? (symbol, decimals) : ("", "");
        var typed = new TypedSettings(unit, places, form.Of("step_after_s"), form.Of("mechanics").Split('\n'));
        if (typed.Read(out var problems) is not { } settings)
        {
            return Result(Page(desk, options, form with { Sentence = "Not saved yet: what is marked needs another look. What you typed is still here." }, problems, form.Of("seen")), StatusCodes.Status400BadRequest);
        }

        try
        {
            desk.Save(settings, form.Of("seen"));
            return TypedResults.LocalRedirect("/settings?saved=yes");
        }
        catch (ChangedMeanwhileException e)
        {
            var (there, tag) = desk.Look();
            return Result(Page(desk, options, form with { Sentence = e.Message }, problems, tag) with { Meanwhile = [.. Facts(there)] }, StatusCodes.Status409Conflict);
        }
    }

    private static SettingsView Page(SettingsDesk desk, StationOptions options, FormState form, IReadOnlyDictionary<string, string> errors, string seen) => new()
    {
        Lengths = [.. LengthUnits.All.Select(unit => new LengthChoice(CodeOf(unit), Title(unit), LengthText.Of(Example, unit)))],
        Form = form,
        Errors = errors,
        LongestStep = ShopFile.LongestStepSeconds,
        Seen = seen,
        UnitOfThisRun = desk.Ways.UnitOfThisRun is { } told ? LengthText.Symbol(told) : null,
        File = options.Data.Shop,
    };

    private static RazorComponentResult<SettingsPage> Result(SettingsView model, int status) => new(new { Model = model }) { StatusCode = status };

    private static FormState Typed(ShopFile settings) => new(new Dictionary<string, IReadOnlyList<string>>
    {
        ["lengths"] = [CodeOf(settings.Unit)],
        ["step_after_s"] = [Seconds(settings)],
        ["mechanics"] = [string.Join('\n', settings.Mechanics)],
    });

    private static IEnumerable<Fact> Facts(ShopFile settings)
    {
        yield return new("Lengths", Title(settings.Unit));
        yield return new("Seconds before the bay goes on", Seconds(settings));
        yield return new("Mechanics", settings.Mechanics.Count == 0 ? "none" : string.Join(", ", settings.Mechanics));
    }

    private static string Seconds(ShopFile settings) => ((long)settings.StepAfter.TotalSeconds).ToString(CultureInfo.InvariantCulture);

    private static string Title(LengthUnit unit) => unit switch
    {
        LengthUnit.Inch => "Inches, to ten-thousandths",
        LengthUnit.InchThousandths => "Inches, to thousandths",
        LengthUnit.Millimetre => "Millimetres, to thousandths",
        _ => "Millimetres, to hundredths",
    };

    /// <summary>Settings as a program sends them; what is left out stays.</summary>
    internal sealed record SettingsRequest(string? Unit = null, int? Places = null, long? StepAfterS = null, IReadOnlyList<string>? Mechanics = null)
    {
        public TypedSettings Over(ShopFile before)
        {
            var keepsUnit = Unit is null || Unit == LengthText.Symbol(before.Unit);
            return new(
                Unit ?? LengthText.Symbol(before.Unit),
                (Places ?? (keepsUnit ? before.Unit.Places : null))?.ToString(CultureInfo.InvariantCulture),
                (StepAfterS ?? (long)before.StepAfter.TotalSeconds).ToString(CultureInfo.InvariantCulture),
                Mechanics ?? before.Mechanics);
        }
    }
}
