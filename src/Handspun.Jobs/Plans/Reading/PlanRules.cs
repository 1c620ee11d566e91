using Handspun.Jobs.Points;

namespace Handspun.Jobs.Plans.Reading;

/// <summary>What must hold between the steps and parts of a plan.</summary>
internal static class PlanRules
{
    /// <summary>Notes every rule that does not hold.</summary>
    public static void Check(Plan plan, PlanText text)
    {
        if (plan.Steps.Count == 0)
        {
            text.Complain("", "it has no steps: write [[step]] for each.");
        }

        Once("step", plan.Steps, step => step.Code, "code", text);
        Once("step", plan.Steps, step => step.Point ?? "", "point", text);
        Once("part", plan.Parts, part => part.Code, "code", text);
        for (var place = 0; place < plan.Steps.Count; place++)
        {
            CheckPoint(plan.Steps[place], $"step[{place}]", text);
            CheckOrder(plan, place, text);
        }
    }

    private static void Once<T>(string table, IReadOnlyList<T> items, Func<T, string> nameOf, string key, PlanText text)
    {
        foreach (var same in items.Select((item, place) => (Name: nameOf(item), Path: $"{table}[{place}].{key}")).Where(item => item.Name.Length > 0).GroupBy(item => item.Name).Where(same => same.Count() > 1))
        {
            text.Complain(same.Last().Path, $"{(key == "code" ? table : key)} '{same.Key}' stands twice, first in line {text.LineOf(same.First().Path)}: leave one out or give it another name.");
        }
    }

    private static void CheckPoint(PlanStep step, string path, PlanText text)
    {
        var known = PointCatalogue.Find(step.Point);
        if (step.Kind != StepKind.Point && (step.Gate || step.Point is not null || step.Limit is not null))
        {
            text.Complain(path + (step.Gate ? ".gate" : step.Point is not null ? ".point" : ".limit"), step.Gate
                ? $"step '{step.Code}' is a gate but measures no point, so it can have no verdict: write kind = \"point\", or name it in after = [\"{step.Code}\"] of the steps that wait for it."
                : $"step '{step.Code}' measures nothing: write kind = \"point\", or leave its point and limit out.");
        }
        else if (step.Kind == StepKind.Point && known is null && step.Point is { Length: > 0 })
        {
            text.Complain(path + ".point", $"there is no measuring point '{step.Point}'; known are {string.Join(", ", PointCatalogue.All.Select(point => point.Code))}.");
        }
        else if (step.Gate && known is { ShippedLimit: null } && step.Limit is null)
        {
            text.Complain(path + ".gate", $"step '{step.Code}' is a gate but has nothing to be held against: give it limit = {{ at_most = \"0.005 in\", source = \"…\" }}.");
        }
    }

    private static void CheckOrder(Plan plan, int place, PlanText text)
    {
        var (step, path) = (plan.Steps[place], $"step[{place}].after");
        foreach (var named in step.After)
        {
            var stands = plan.Steps.ToList().FindIndex(other => other.Code == named);
            if (stands < 0)
            {
                text.Complain(path, $"step '{step.Code}' waits for '{named}', and there is no such step.");
            }
            else if (stands >= place && Circle(plan, named, step.Code) is { } circle)
            {
                text.Complain(path, $"these steps wait for each other in a circle, so none could ever begin: {string.Join(" → ", circle)}. Take one out of an after list.");
            }
            else if (stands > place)
            {
                text.Complain(path, $"step '{step.Code}' waits for '{named}', which stands below it: move it down, or take '{named}' out of its after list.");
            }
        }
    }

    // From one step along what it waits for, back to the step that waits for it; each step is gone through once.
    private static IReadOnlyList<string>? Circle(Plan plan, string from, string backTo)
    {
        var seen = new HashSet<string>();
        IReadOnlyList<string>? Walk(string at, IReadOnlyList<string> walked) =>
            at == backTo ? [.. walked, at]
            : !seen.Add(at) ? null
            : (plan.Find(at)?.After ?? []).Select(next => Walk(next, [.. walked, at])).FirstOrDefault(found => found is not null);

        return Walk(from, [backTo]);
    }
}
