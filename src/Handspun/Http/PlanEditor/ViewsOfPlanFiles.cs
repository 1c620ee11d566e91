using System.Globalization;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Plans;
using Handspun.Jobs.Plans.Writing;
using Handspun.Jobs.Points;
using Handspun.Pages;
using Handspun.Pages.PlanEditor;
using Handspun.Pages.Plans;
using Handspun.PlanFiles;
using Handspun.Station;

namespace Handspun.Http.PlanEditor;

/// <summary>The shop's plans as their pages show them.</summary>
internal static class ViewsOfPlanFiles
{
    /// <summary>All plans.</summary>
    public static PlanListView List(PlanShelf shelf, PlanDesk desk, FormState form)
    {
        var lines = shelf.Codes.Select(code => (IsOwn: desk.IsOwn(code), Line: Line(code, desk))).ToList();
        return new([.. lines.Where(one => one.IsOwn).Select(one => one.Line)], [.. lines.Where(one => !one.IsOwn).Select(one => one.Line)], form);
    }

    /// <summary>One plan; null where its text does not hold, or is not cut into steps as the forms need it.</summary>
    public static PlanEditView? Edit(string code, PlanDesk desk, StationOptions options, FormState form)
    {
        var text = desk.Read(code);
        if (PlanDesk.Parse(code, text.Text, out _) is not { } plan || !IsCutUp(plan, text.Text))
        {
            return null;
        }

        return new()
        {
            Code = code,
            Title = plan.Title,
            About = plan.About,
            IsOwn = desk.IsOwn(code),
            Steps = [.. plan.Steps.Select(step => new PlanStepLine(step.Code, step.Title, Kind(step.Kind), Note(plan, step, options.Unit), step.Gate))],
            Parts = [.. plan.Parts.Select(part => new PlanPartLine(part.Code, part.Name, part.Faces ?? ""))],
            Points = [.. PointCatalogue.All.Where(point => plan.Steps.All(step => step.Point != point.Code)).Select(point => new Choice(point.Code, point.Title))],
            Seen = text.Tag,
            Form = form,
        };
    }

    /// <summary>The form of a step; null where there is none, or the plan cannot be changed.</summary>
    public static PlanStepFormView? StepForm(string code, string step, PlanDesk desk, StationOptions options, FormState? form = null, IReadOnlyDictionary<string, string>? errors = null)
    {
        var text = desk.Read(code);
        if (!desk.IsOwn(code) || PlanDesk.Parse(code, text.Text, out _) is not { } plan || !IsCutUp(plan, text.Text) || plan.Find(step) is not { } found)
        {
            return null;
        }

        var place = plan.Steps.ToList().IndexOf(found);
        var point = PointCatalogue.Find(found.Point);
        return new()
        {
            Plan = code,
            PlanTitle = plan.Title,
            Code = step,
            Title = found.Title,
            Kind = StepKindCodes.Of(found.Kind),
            Place = place + 1,
            Steps = plan.Steps.Count,
            Point = point is null ? null : new(point.Title, point.How, point.ShippedLimit is { } limit ? $"{LimitSentence.Bounds(limit, options.Unit)} ({limit.Source})" : null),
            Above = [.. plan.Steps.Take(place).Select(above => new Choice(above.Code, above.Title))],
            Seen = text.Tag,
            Form = form ?? State(TypedStep.Of(found, options.Unit), place),
            Errors = errors ?? new Dictionary<string, string>(),
        };
    }

    /// <summary>The text of a plan as it stands.</summary>
    public static PlanTextView Text(string code, PlanDesk desk)
    {
        var text = desk.Read(code);
        _ = PlanDesk.Parse(code, text.Text, out var problems);
        return Text(code, desk, text.Text, text.Tag, problems) with { Sentence = null };
    }

    /// <summary>The text of a plan as it was typed, with what is wrong.</summary>
    public static PlanTextView Text(string code, PlanDesk desk, string text, string seen, IReadOnlyList<PlanProblem> problems)
    {
        var lines = text.ReplaceLineEndings("\n").Split('\n');
        return new(
            code,
            text,
            desk.IsOwn(code),
            seen,
            [.. problems.OrderBy(problem => problem.Line).Select(problem => new LineProblem(
                problem.Line,
                problem.Line is { } line and > 0 && line <= lines.Length ? lines[line - 1] : null,
                problem.Alone))],
            null,
            problems.Count == 0 ? null : "Not saved: the plan does not hold as it is. What you typed is still here.");
    }

    private static PlanLineView Line(string code, PlanDesk desk) => PlanDesk.Parse(code, desk.Read(code).Text, out var problems) is { } plan
        ? new(code, plan.Title, string.Create(CultureInfo.InvariantCulture, $"{plan.About} {plan.Steps.Count} {(plan.Steps.Count == 1 ? "step" : "steps")}.").TrimStart(), [])
        : new(code, code, "It cannot be used until it is mended.", [.. problems.Select(problem => problem.ToString())]);

    // Steps can be written in ways that are not cut apart; such a plan is changed as text.
    private static bool IsCutUp(Plan plan, string text) => PlanSheet.Of(text) is var sheet && (sheet.Steps, sheet.Parts) == (plan.Steps.Count, plan.Parts.Count);

    private static FormState State(TypedStep step, int place) => new(new Dictionary<string, IReadOnlyList<string>>
    {
        ["title"] = [step.Title],
        ["how"] = [step.How],
        ["cautions"] = [string.Join('\n', step.Cautions)],
        ["places"] = [string.Join('\n', step.Places)],
        ["after"] = step.After,
        ["gate"] = [step.Gate ? "yes" : ""],
        ["if_over"] = [step.IfOver],
        ["if_undecided"] = [step.IfUndecided],
        ["at_least"] = [step.AtLeast],
        ["at_most"] = [step.AtMost],
        ["source"] = [step.Source],
        ["drive"] = [step.Drive],
        ["age"] = [step.Age],
        ["place"] = [(place + 1).ToString(CultureInfo.InvariantCulture)],
    });

    private static string Kind(StepKind kind) => kind switch
    {
        StepKind.Point => "Measure",
        StepKind.Finding => "Look and note",
        _ => "See to and tick",
    };

    private static string Note(Plan plan, PlanStep step, LengthUnit unit) => string.Join(". ", new[]
    {
        step.Limit is { } limit ? $"Limit {LimitSentence.Bounds(limit, unit)}" : null,
        step.After.Count > 0 ? $"After: {string.Join(", ", step.After.Select(code => plan.Find(code)?.Title ?? code))}" : null,
    }.OfType<string>());
}
