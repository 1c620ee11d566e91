using System.Globalization;
using Handspun.Http.Plans;
using Handspun.Jobs.Plans;
using Handspun.Jobs.Plans.Writing;
using Handspun.Jobs.Points;
using Handspun.Jobs.Toml;
using Handspun.Pages.PlanEditor;
using Handspun.Pages.Plans;
using Handspun.PlanFiles;
using Handspun.SharedFiles;
using Handspun.Station;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Handspun.Http.PlanEditor;

/// <summary>The pages on which the shop changes its plans. What cannot be kept comes back with the sentence and with all that was typed.</summary>
internal static class PlanPages
{
    /// <summary>Maps them.</summary>
    public static void MapPlanPages(this IEndpointRouteBuilder routes)
    {
        // The same-origin guard does for forms what a token would do.
        var plans = routes.MapGroup("/plans").ExcludeFromDescription().DisableAntiforgery();
        plans.MapGet("", (PlanShelf shelf, PlanDesk desk) => Page<PlanListPage>(ViewsOfPlanFiles.List(shelf, desk, FormState.Empty)));
        plans.MapPost("", CopyAsync);
        plans.MapGet("/{plan}", (string plan, PlanDesk desk, StationOptions options) => Shown(plan, desk, options));
        plans.MapPost("/{plan}", HeadAsync);
        plans.MapPost("/{plan}/order", OrderAsync);
        plans.MapPost("/{plan}/steps", AddAsync);
        plans.MapGet("/{plan}/steps/{step}", (string plan, string step, PlanDesk desk, StationOptions options) => ViewsOfPlanFiles.StepForm(plan, step, desk, options) is { } form
            ? Page<PlanStepPage>(form)
            : throw new PlanNotFoundException($"Plan '{plan}' has no step '{step}' that can be changed here: its page lists its steps."));
        plans.MapPost("/{plan}/steps/{step}", StepAsync);
        plans.MapPost("/{plan}/parts", AddPartAsync);
        plans.MapPost("/{plan}/parts/remove", RemovePartAsync);
        plans.MapGet("/{plan}/text", (string plan, PlanDesk desk) => Page<PlanTextPage>(ViewsOfPlanFiles.Text(plan, desk)));
        plans.MapPost("/{plan}/text", TextAsync);
    }

    // A plan that does not hold can only be mended as text.
    private static IResult Shown(string plan, PlanDesk desk, StationOptions options, FormState? form = null, int status = StatusCodes.Status200OK) =>
        ViewsOfPlanFiles.Edit(plan, desk, options, form ?? FormState.Empty) is { } view ? Page<PlanEditPage>(view, status) : TypedResults.LocalRedirect($"/plans/{plan}/text");

    private static async Task<IResult> CopyAsync(HttpRequest request, PlanShelf shelf, PlanDesk desk)
    {
        var form = PageDesk.StateOf(await request.ReadFormAsync(request.HttpContext.RequestAborted));
        try
        {
            return TypedResults.LocalRedirect($"/plans/{desk.Copy(form.Of("from"), form.Of("title"))}");
        }
        catch (PlanException e)
        {
            return Page<PlanListPage>(ViewsOfPlanFiles.List(shelf, desk, form with { Field = "title", Sentence = Sentence(e) }), StatusCodes.Status400BadRequest);
        }
    }

    private static Task<IResult> HeadAsync(string plan, HttpRequest request, PlanDesk desk, StationOptions options) => ChangeAsync(plan, request, desk, options, form =>
    {
        if (form.Of("act") == "away")
        {
            desk.PutAway(plan, form.Of("seen"));
            return "/plans";
        }

        var (title, about) = (form.Of("title").Trim(), form.Of("about").Trim());
        if (title.Length == 0)
        {
            throw new BadFieldException("title", "Say what the plan is called.");
        }

        _ = desk.Change(plan, form.Of("seen"), text => TomlLines.Set(TomlLines.Set(text, "title", TomlLines.Quoted(title)), "about", about.Length == 0 ? null : TomlLines.Quoted(about)));
        return $"/plans/{plan}";
    });

    private static Task<IResult> OrderAsync(string plan, HttpRequest request, PlanDesk desk, StationOptions options) => ChangeAsync(plan, request, desk, options, form =>
    {
        var (step, by) = form.Of("up") is { Length: > 0 } up ? (up, -1) : (form.Of("down"), 1);
        _ = desk.Change(plan, form.Of("seen"), text =>
        {
            var place = PlaceOf(Plan(plan, text), step);
            var sheet = PlanSheet.Of(text);
            return sheet.WithStepAt(place, Math.Clamp(place + by, 0, sheet.Steps - 1)).Text;
        });
        return $"/plans/{plan}#step-{step}";
    });

    private static Task<IResult> AddAsync(string plan, HttpRequest request, PlanDesk desk, StationOptions options) => ChangeAsync(plan, request, desk, options, form =>
    {
        var code = "";
        _ = desk.Change(plan, form.Of("seen"), text =>
        {
            var there = Plan(plan, text);
            var measures = form.Of("kind") == "point";
            var (point, title) = (PointCatalogue.Find(form.Of("point")), form.Of("step_title").Trim());
            if (measures ? point is null : title.Length == 0)
            {
                throw new BadFieldException(measures ? "point" : "step_title", measures ? "Choose the point that is measured." : "Say in a few words what is done.");
            }

            code = measures ? PlanCode.Of(point!.Code, "step", Codes(there)) : PlanCode.Of(title, "step", Codes(there));
            var after = there.Steps.ToList().FindIndex(step => step.Code == form.Of("after_step")) + 1;
            return PlanSheet.Of(text).WithNewStep(after, new TypedStep { Code = code, Kind = form.Of("kind"), Point = measures ? point!.Code : "", Title = title }.ToToml()).Text;
        });
        return $"/plans/{plan}/steps/{code}";
    });

    private static Task<IResult> AddPartAsync(string plan, HttpRequest request, PlanDesk desk, StationOptions options) => ChangeAsync(plan, request, desk, options, form =>
    {
        var (title, place, faces) = (form.Of("part_title").Trim(), form.Of("part_place").Trim(), form.Of("part_faces").Trim());
        if (title.Length == 0)
        {
            throw new BadFieldException("part_title", "Say what the part is.");
        }

        _ = desk.Change(plan, form.Of("seen"), text =>
        {
            var code = PlanCode.Of($"{title} {place}", "part", [.. Plan(plan, text).Parts.Select(part => part.Code)]);
            var lines = new[] { ("code", code), ("title", title), ("place", place), ("faces", faces) }.Where(line => line.Item2.Length > 0).Select(line => $"{line.Item1} = {TomlLines.Quoted(line.Item2)}");
            return PlanSheet.Of(text).WithNewPart("[[part]]\n" + string.Join('\n', lines)).Text;
        });
        return $"/plans/{plan}#plan-parts";
    });

    private static Task<IResult> RemovePartAsync(string plan, HttpRequest request, PlanDesk desk, StationOptions options) => ChangeAsync(plan, request, desk, options, form =>
    {
        _ = desk.Change(plan, form.Of("seen"), text => Plan(plan, text).Parts.ToList().FindIndex(part => part.Code == form.Of("part")) is >= 0 and var place
            ? PlanSheet.Of(text).WithoutPart(place).Text
            : throw new PlanNotFoundException($"Plan '{plan}' has no part '{form.Of("part")}': its page lists its parts."));
        return $"/plans/{plan}#plan-parts";
    });

    private static async Task<IResult> StepAsync(string plan, string step, HttpRequest request, PlanDesk desk, StationOptions options)
    {
        var form = PageDesk.StateOf(await request.ReadFormAsync(request.HttpContext.RequestAborted));
        var place = -1;
        try
        {
            _ = desk.Change(plan, form.Of("seen"), text =>
            {
                var there = Plan(plan, text);
                place = PlaceOf(there, step);
                var sheet = PlanSheet.Of(text);
                return form.Of("act") == "remove" ? sheet.WithoutStep(place).Text : Moved(sheet.WithStep(place, Typed(there.Steps[place], form).ToToml()), ref place, form).Text;
            });
            return TypedResults.LocalRedirect(form.Of("act") == "remove" ? $"/plans/{plan}#steps" : $"/plans/{plan}#step-{step}");
        }
        catch (BadFieldException e)
        {
            return StepAgain(plan, step, desk, options, form, new Dictionary<string, string> { [e.Field] = e.Message }, StatusCodes.Status400BadRequest);
        }
        catch (PlanException e)
        {
            var errors = e.Found.Select(problem => (Field: TypedStep.FieldOf(problem, place), problem)).Where(one => one.Field is not null)
                .GroupBy(one => one.Field!).ToDictionary(field => field.Key, field => string.Join(" ", field.Select(one => one.problem.Alone)));
            return StepAgain(plan, step, desk, options, form with { Sentence = Sentence(e) }, errors, StatusCodes.Status400BadRequest);
        }
        catch (ChangedMeanwhileException e)
        {
            return StepAgain(plan, step, desk, options, form with { Sentence = e.Message }, new Dictionary<string, string>(), StatusCodes.Status409Conflict);
        }
    }

    private static IResult StepAgain(string plan, string step, PlanDesk desk, StationOptions options, FormState form, IReadOnlyDictionary<string, string> errors, int status)
    {
        var sentence = form.Sentence ?? "Not kept yet: what is marked needs another look. What you typed is still here.";
        if (ViewsOfPlanFiles.StepForm(plan, step, desk, options, form with { Sentence = sentence }, errors) is { } view)
        {
            var meanwhile = status == StatusCodes.Status409Conflict;
            return Page<PlanStepPage>(meanwhile ? view with { IsMeanwhile = true } : view with { Seen = form.Of("seen") }, status);
        }

        // Somebody took the step out: what was typed is shown where the step was.
        var typed = new TypedStep { Code = step, Kind = form.Of("kind"), Title = form.Of("title"), How = form.Of("how"), Cautions = Lines(form.Of("cautions")), Places = Lines(form.Of("places")), IfOver = form.Of("if_over"), IfUndecided = form.Of("if_undecided"), AtLeast = form.Of("at_least"), AtMost = form.Of("at_most"), Source = form.Of("source") };
        return Shown(plan, desk, options, new(new Dictionary<string, IReadOnlyList<string>> { ["lost"] = [typed.ToToml()] }, null, $"Step '{step}' is no longer in the plan: somebody took it out meanwhile."), StatusCodes.Status409Conflict);
    }

    private static async Task<IResult> TextAsync(string plan, HttpRequest request, PlanDesk desk)
    {
        var form = PageDesk.StateOf(await request.ReadFormAsync(request.HttpContext.RequestAborted));
        var typed = form.Of("text").ReplaceLineEndings("\n");
        try
        {
            _ = desk.Change(plan, form.Of("seen"), _ => typed);
            return TypedResults.LocalRedirect($"/plans/{plan}");
        }
        catch (PlanException e)
        {
            return Page<PlanTextPage>(ViewsOfPlanFiles.Text(plan, desk, typed, form.Of("seen"), e.Found), StatusCodes.Status400BadRequest);
        }
        catch (ChangedMeanwhileException e)
        {
            return Page<PlanTextPage>(ViewsOfPlanFiles.Text(plan, desk, typed, e.Now.Tag, []) with { Now = e.Now.Text, Sentence = e.Message }, StatusCodes.Status409Conflict);
        }
    }

    private static async Task<IResult> ChangeAsync(string plan, HttpRequest request, PlanDesk desk, StationOptions options, Func<FormState, string> change)
    {
        var form = PageDesk.StateOf(await request.ReadFormAsync(request.HttpContext.RequestAborted));
        try
        {
            return TypedResults.LocalRedirect(change(form));
        }
        catch (BadFieldException e)
        {
            return Shown(plan, desk, options, form with { Field = e.Field, Sentence = e.Message }, StatusCodes.Status400BadRequest);
        }
        catch (PlanException e)
        {
            return Shown(plan, desk, options, form with { Field = e.Found[0].Key is { Length: > 0 } key ? key : null, Sentence = Sentence(e) }, StatusCodes.Status400BadRequest);
        }
        catch (ChangedMeanwhileException e)
        {
            return Shown(plan, desk, options, form with { Sentence = e.Message }, StatusCodes.Status409Conflict);
        }
    }

    private static PlanSheet Moved(PlanSheet sheet, ref int place, FormState form)
    {
        var typed = form.Of("place").Trim();
        if (typed.Length == 0)
        {
            return sheet;
        }

        if (!int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out var wanted) || wanted < 1 || wanted > sheet.Steps)
        {
            throw new BadFieldException("place", string.Create(CultureInfo.InvariantCulture, $"Type a whole number from 1 to {sheet.Steps}."));
        }

        var from = place;
        place = wanted - 1;
        return from == place ? sheet : sheet.WithStepAt(from, place);
    }

    private static TypedStep Typed(PlanStep step, FormState form) => new()
    {
        Code = step.Code,
        Kind = StepKindCodes.Of(step.Kind),
        Point = step.Point ?? "",
        Title = form.Of("title"),
        How = form.Of("how"),
        Cautions = Lines(form.Of("cautions")),
        After = form.Typed.GetValueOrDefault("after") ?? [],
        Gate = form.Has("gate", "yes"),
        IfOver = form.Of("if_over"),
        IfUndecided = form.Of("if_undecided"),
        Places = Lines(form.Of("places")),
        AtLeast = form.Of("at_least"),
        AtMost = form.Of("at_most"),
        Source = form.Of("source"),
        Drive = form.Of("drive"),
        Age = form.Of("age"),
    };

    private static Plan Plan(string code, string text) => PlanDesk.Parse(code, text, out var problems) ?? throw new PlanException(problems);

    private static int PlaceOf(Plan plan, string step) => plan.Steps.ToList().FindIndex(one => one.Code == step) is >= 0 and var place
        ? place
        : throw new PlanNotFoundException($"Plan '{plan.Code}' has no step '{step}': its page lists its steps.");

    private static IReadOnlyCollection<string> Codes(Plan plan) => [.. plan.Steps.Select(step => step.Code)];

    private static IReadOnlyList<string> Lines(string text) => [.. text.Split('\n').Select(line => line.Trim()).Where(line => line.Length > 0)];

    private static string Sentence(PlanException e) => "Not kept: " + string.Join(" ", e.Found.Select(problem => problem.Alone));

    private static RazorComponentResult<TPage> Page<TPage>(object model, int status = StatusCodes.Status200OK) where TPage : IComponent => new(new { Model = model }) { StatusCode = status };

    private sealed class BadFieldException(string field, string sentence) : Exception(sentence)
    {
        public string Field { get; } = field;
    }
}
