using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace Handspun.Jobs.Plans.Writing;

/// <summary>The text of a plan, cut into its steps and parts, so that one of them is changed and all else stays as somebody wrote it, comments too.</summary>
/// <remarks>Only the text is cut: whether the plan holds is for <see cref="Reading.PlanReader"/> to say.</remarks>
public sealed class PlanSheet
{
    private const string Step = "step";
    private const string Part = "part";

    private readonly List<Block> _blocks;

    private PlanSheet(string head, List<Block> blocks) => (Head, _blocks) = (head, blocks);

    /// <summary>What stands above the first step or part: title, purpose, comments.</summary>
    public string Head { get; }

    /// <summary>How many steps it was cut into.</summary>
    public int Steps => _blocks.Count(block => block.Table == Step);

    /// <summary>How many parts it was cut into.</summary>
    public int Parts => _blocks.Count(block => block.Table == Part);

    /// <summary>The whole text.</summary>
    public string Text => string.Join("\n\n", new[] { Head }.Concat(_blocks.Select(block => block.Text)).Where(text => text.Length > 0)) + "\n";

    /// <summary>Cuts a text.</summary>
    /// <exception cref="Tomlyn.TomlException">It is not TOML.</exception>
    public static PlanSheet Of(string toml)
    {
        var lines = toml.ReplaceLineEndings("\n").Split('\n');
        var heads = SyntaxParser.ParseStrict(toml.ReplaceLineEndings("\n"), "plan.toml", validate: true).Tables
            .Select(table => (table, Name: table.Name?.ToString()?.Trim(), Line: table.Name?.Span.Start.Line ?? 0))
            .Where(at => at.table is TableArraySyntax && at.Name is Step or Part)
            .Select(at => (at.Name, First: WithComments(lines, at.Line)))
            .ToList();
        var blocks = heads.Select((head, place) => new Block(head.Name!, Between(lines, head.First, place + 1 < heads.Count ? heads[place + 1].First : lines.Length)));
        return new(Between(lines, 0, heads.Count > 0 ? heads[0].First : lines.Length), [.. blocks]);
    }

    /// <summary>The text of a step.</summary>
    public string StepText(int place) => _blocks[PlaceOf(Step, place)].Text;

    /// <summary>The same plan with another head.</summary>
    public PlanSheet WithHead(string head) => new(head.Trim('\n'), _blocks);

    /// <summary>The same plan with another text for a step; comments on lines of their own are kept above it.</summary>
    public PlanSheet WithStep(int place, string text)
    {
        var at = PlaceOf(Step, place);
        var comments = _blocks[at].Text.Split('\n').Where(line => line.TrimStart().StartsWith('#')).Select(line => line.Trim());
        return Changed(blocks => blocks[at] = new(Step, string.Join('\n', [.. comments, text.Trim('\n')])));
    }

    /// <summary>The same plan with a step more, after so many others.</summary>
    public PlanSheet WithNewStep(int after, string text) => Changed(blocks => blocks.Insert(after == 0 ? 0 : PlaceOf(Step, after - 1) + 1, new(Step, text.Trim('\n'))));

    /// <summary>The same plan with a part more at its end.</summary>
    public PlanSheet WithNewPart(string text) => Changed(blocks => blocks.Add(new(Part, text.Trim('\n'))));

    /// <summary>The same plan without a step.</summary>
    public PlanSheet WithoutStep(int place) => Changed(blocks => blocks.RemoveAt(PlaceOf(Step, place)));

    /// <summary>The same plan without a part.</summary>
    public PlanSheet WithoutPart(int place) => Changed(blocks => blocks.RemoveAt(PlaceOf(Part, place)));

    /// <summary>The same plan with a step in another place among the steps.</summary>
    public PlanSheet WithStepAt(int from, int to)
    {
        var text = StepText(from);
        return WithoutStep(from).WithNewStep(to, text);
    }

    private PlanSheet Changed(Action<List<Block>> change)
    {
        List<Block> blocks = [.. _blocks];
        change(blocks);
        return new(Head, blocks);
    }

    private int PlaceOf(string table, int place) => _blocks.Select((block, at) => (block, at)).Where(one => one.block.Table == table).ElementAt(place).at;

    // A comment that touches the head of a table belongs to it.
    private static int WithComments(string[] lines, int head)
    {
        while (head > 0 && lines[head - 1].TrimStart().StartsWith('#'))
        {
            head--;
        }

        return head;
    }

    private static string Between(string[] lines, int from, int to) => string.Join('\n', lines[from..to]).Trim('\n').TrimEnd();

    private sealed record Block(string Table, string Text);
}
