using System.Text;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Points;
using Handspun.Jobs.Toml;

namespace Handspun.Jobs.Plans.Writing;

/// <summary>A step as somebody typed it. It may be wrong: the reader says so when the plan with it is read.</summary>
public sealed record TypedStep
{
    /// <summary>Its name in data.</summary>
    public required string Code { get; init; }

    /// <summary><c>point</c>, <c>check</c> or <c>finding</c>.</summary>
    public required string Kind { get; init; }

    /// <summary>Its measuring point; empty for none.</summary>
    public string Point { get; init; } = "";

    /// <summary>Its name on screens; empty takes the point's.</summary>
    public string Title { get; init; } = "";

    /// <summary>How it is done; empty takes the point's.</summary>
    public string How { get; init; } = "";

    /// <summary>What to heed.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>The steps above that must be through first.</summary>
    public IReadOnlyList<string> After { get; init; } = [];

    /// <summary>Whether what comes after waits for its verdict.</summary>
    public bool Gate { get; init; }

    /// <summary>What to tell the customer where it is over; empty takes the usual words.</summary>
    public string IfOver { get; init; } = "";

    /// <summary>What to tell the customer where it is too close to call; empty takes the usual words.</summary>
    public string IfUndecided { get; init; } = "";

    /// <summary>Places of a finding.</summary>
    public IReadOnlyList<string> Places { get; init; } = [];

    /// <summary>The smallest value allowed, with its unit; empty for none.</summary>
    public string AtLeast { get; init; } = "";

    /// <summary>The largest value allowed, with its unit; empty for none.</summary>
    public string AtMost { get; init; } = "";

    /// <summary>Where the limit comes from.</summary>
    public string Source { get; init; } = "";

    /// <summary>The cam drive that the limit is for, as a code; empty for both.</summary>
    public string Drive { get; init; } = "";

    /// <summary>The parts that the limit is for, as a code; empty where nobody says.</summary>
    public string Age { get; init; } = "";

    /// <summary>A step of a plan, to be typed over. What is as the point has it is left empty.</summary>
    public static TypedStep Of(PlanStep step, LengthUnit unit)
    {
        var known = PointCatalogue.Find(step.Point);
        return new()
        {
            Code = step.Code,
            Kind = StepKindCodes.Of(step.Kind),
            Point = step.Point ?? "",
            Title = step.Title == known?.Title ? "" : step.Title,
            How = step.How == known?.How ? "" : step.How ?? "",
            Cautions = step.Cautions,
            After = step.After,
            Gate = step.Gate,
            IfOver = step.IfOver ?? "",
            IfUndecided = step.IfUndecided ?? "",
            Places = step.Places,
            AtLeast = LengthText.AsTyped(step.Limit?.LowerMillimetres, unit),
            AtMost = LengthText.AsTyped(step.Limit?.UpperMillimetres, unit),
            Source = step.Limit?.Source ?? "",
            Drive = LimitCondition.Of(step.Limit?.Drive) ?? "",
            Age = LimitCondition.Of(step.Limit?.Age) ?? "",
        };
    }

    /// <summary>The step as a plan's text has it.</summary>
    public string ToToml()
    {
        var text = new StringBuilder("[[step]]\n");
        void Line(string key, string value) => text.Append(key).Append(" = ").Append(value).Append('\n');
        void Words(string key, string words)
        {
            if (words.Trim() is { Length: > 0 } typed)
            {
                Line(key, TomlLines.Quoted(typed));
            }
        }

        Words("code", Code);
        Words("kind", Kind);
        Words("point", Point == Code ? "" : Point);
        Words("title", Title);
        Words("how", How);
        Many("cautions", Cautions);
        Many("after", After);
        if (Gate)
        {
            Line("gate", "true");
        }

        Words("if_over", IfOver);
        Words("if_undecided", IfUndecided);
        Many("places", Places);
        if (Limit() is { Length: > 0 } limit)
        {
            Line("limit", $"{{ {limit} }}");
        }

        return text.ToString();

        void Many(string key, IReadOnlyList<string> items)
        {
            if (items.Count > 0)
            {
                var quoted = items.Select(TomlLines.Quoted).ToList();
                Line(key, quoted.Sum(item => item.Length) < 80 ? $"[{string.Join(", ", quoted)}]" : $"[\n  {string.Join(",\n  ", quoted)},\n]");
            }
        }
    }

    private string Limit() => string.Join(", ", new[] { ("at_least", AtLeast), ("at_most", AtMost), ("source", Source), ("drive", Drive), ("age", Age) }
        .Where(part => part.Item2.Trim().Length > 0)
        .Select(part => $"{part.Item1} = {TomlLines.Quoted(part.Item2.Trim())}"));

    /// <summary>The field that a problem of the plan is about; null where it is about another step or about all of them.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="place">The step's place in the plan, from 0.</param>
    public static string? FieldOf(PlanProblem problem, int place)
    {
        var own = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"step[{place}]");
        return problem.Key == own ? "title"
            : !problem.Key.StartsWith(own + ".", StringComparison.Ordinal) ? null
            : problem.Key[(own.Length + 1)..] switch
            {
                "limit" or "limit." or "limit.at_least" or "limit.at_most" => "at_most",
                var key => key.StartsWith("limit.", StringComparison.Ordinal) ? key["limit.".Length..] : key,
            };
    }
}
