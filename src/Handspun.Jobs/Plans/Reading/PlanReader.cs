using Handspun.Jobs.Points;
using Tomlyn;
using Tomlyn.Model;
using Tomlyn.Parsing;

namespace Handspun.Jobs.Plans.Reading;

/// <summary>Reads a plan from TOML and tells all that is wrong with it at once.</summary>
public static class PlanReader
{
    /// <summary>Reads a plan.</summary>
    /// <param name="code">The name of the file without its ending.</param>
    /// <param name="toml">Its text.</param>
    /// <exception cref="PlanException">It is not TOML, or something in it does not hold.</exception>
    public static Plan Read(string code, string toml)
    {
        PlanText text;
        PlanTable root;
        try
        {
            text = new(code, SyntaxParser.ParseStrict(toml, code + ".toml", validate: true));   // the serializer lets a key stand twice
            root = new(text, "", TomlSerializer.Deserialize<TomlTable>(toml) ?? []);
        }
        catch (TomlException e)
        {
            throw new PlanException([new(code, e.Line, "", $"it is not TOML: {e.Message}") { Whole = $"Plan '{code}' is not TOML: {e.Message}" }]);
        }

        var plan = new Plan
        {
            Code = code,
            Title = root.Needed("title", "say what the plan is called"),
            About = root.Text("about") ?? "",
            Steps = [.. root.Tables("step").Select(Step)],
            Parts = [.. root.Tables("part").Select(Part)],
        };
        root.RefuseTheRest();
        PlanRules.Check(plan, text);
        return text.Problems.Count == 0 ? plan : throw new PlanException(text.Problems);
    }

    private static PlanStep Step(PlanTable table)
    {
        var code = table.Code();
        var kind = table.Needed("kind", $"say which kind of step it is, {Kinds}");
        if (kind.Length > 0 && !StepKindCodes.All.ContainsKey(kind))
        {
            table.Complain("kind", $"'{kind}' is no kind of step: use {Kinds}.");
        }

        var measures = kind == "point";
        var point = table.Text("point") ?? (measures ? code : null);
        var known = measures ? PointCatalogue.Find(point) : null;
        var step = new PlanStep
        {
            Code = code,
            Kind = StepKindCodes.All.GetValueOrDefault(kind, StepKind.Check),
            Point = point,
            Title = known is not null ? table.Text("title") ?? known.Title : table.Needed("title", "say in a few words what is done"),
            How = table.Text("how") ?? known?.How,
            Cautions = table.Texts("cautions"),
            After = table.Texts("after"),
            Gate = table.Switch("gate"),
            IfOver = table.Text("if_over"),
            IfUndecided = table.Text("if_undecided"),
            Places = table.Texts("places"),
            Limit = table.Table("limit") is { } limit ? PlanLimit.Read(limit) : null,
        };
        table.RefuseTheRest();
        return step;
    }

    private static PlanPart Part(PlanTable table)
    {
        var part = new PlanPart
        {
            Code = table.Code(),
            Title = table.Needed("title", "say what the part is"),
            Place = table.Text("place") ?? "",
            Faces = table.Text("faces"),
        };
        table.RefuseTheRest();
        return part;
    }

    private static string Kinds => string.Join(", ", StepKindCodes.All.Keys.Select(kind => $"\"{kind}\""));
}
