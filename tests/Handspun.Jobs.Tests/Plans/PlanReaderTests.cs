using Handspun.Jobs.Plans;
using Handspun.Jobs.Plans.Reading;

namespace Handspun.Jobs.Tests.Plans;

public sealed class PlanReaderTests
{
    private const string Sound = """
        title = "Two looks"

        [[step]]
        code = "ready"
        kind = "check"
        title = "Ready"

        [[step]]
        code = "pinion-runout"
        kind = "point"
        gate = true
        after = ["ready"]
        limit = { at_most = "0.004 in", source = "invented manual, page 7", drive = "gear", age = "service" }

        [[step]]
        code = "look"
        kind = "finding"
        title = "Look"
        places = ["left", "right"]

        [[part]]
        code = "wheel"
        title = "Wheel"
        """;

    [Fact]
    public void Plan_ThatHolds_IsAsItWasWritten()
    {
        var plan = PlanReader.Read("two-looks", Sound);

        Assert.Equal(("two-looks", "Two looks", ""), (plan.Code, plan.Title, plan.About));
        Assert.Equal([("ready", StepKind.Check, false), ("pinion-runout", StepKind.Point, true), ("look", StepKind.Finding, false)], plan.Steps.Select(step => (step.Code, step.Kind, step.Gate)));
        var gate = plan.Steps[1];
        Assert.Equal(("pinion-runout", "Pinion shaft runout", "ready"), (gate.Point, gate.Title, Assert.Single(gate.After)));
        Assert.Equal(0.1016, gate.Limit!.UpperMillimetres!.Value, 1e-12);   // 0.004 in at 25.4 mm exactly
        Assert.False(gate.Limit.Confirmed);
        Assert.Equal(["left", "right"], plan.Steps[2].Places);
        Assert.Equal("Wheel", Assert.Single(plan.Parts).Name);
    }

    [Theory]
    [InlineData("code = \"look\"", "code = \"ready\"", "line 16: step 'ready' stands twice, first in line 4")]
    [InlineData("kind = \"finding\"\ntitle = \"Look\"", "kind = \"point\"\npoint = \"pinion-runout\"", "point 'pinion-runout' stands twice")]
    [InlineData("after = [\"ready\"]", "after = [\"redy\"]", "line 12: step 'pinion-runout' waits for 'redy', and there is no such step")]
    [InlineData("after = [\"ready\"]", "after = [\"look\"]", "line 12: step 'pinion-runout' waits for 'look', which stands below it")]
    [InlineData("title = \"Ready\"", "title = \"Ready\"\nafter = [\"pinion-runout\"]", "in a circle, so none could ever begin: ready → pinion-runout → ready")]
    [InlineData("title = \"Ready\"", "title = \"Ready\"\nafter = [\"ready\"]", "in a circle, so none could ever begin: ready → ready")]
    [InlineData("title = \"Ready\"", "title = \"Ready\"\ngate = true\nplaces = []", "line 7: step 'ready' is a gate but measures no point")]
    [InlineData("code = \"pinion-runout\"", "code = \"pinion-wobble\"", "there is no measuring point 'pinion-wobble'; known are pinion-runout, drive-side-runout")]
    [InlineData("code = \"pinion-runout\"\nkind = \"point\"", "code = \"crank-end-play\"\nkind = \"point\"", "")]
    [InlineData("at_most = \"0.004 in\"", "at_least = \"0.2 mm\", at_most = \"0.004 in\"", "line 13: at_least does not lie below at_most: swap them")]
    [InlineData("at_most = \"0.004 in\"", "at_most = \"0.004\"", "at_most '0.004' is no length. Give the length with its unit")]
    [InlineData("at_most = \"0.004 in\", source = \"invented manual, page 7\"", "at_most = \"0.004 in\"", "'source' is missing: say where the limit comes from")]
    [InlineData("drive = \"gear\"", "drive = \"belt\"", "drive 'belt' is not known: write \"chain\" or \"gear\"")]
    [InlineData("kind = \"finding\"", "kind = \"look\"", "line 17: 'look' is no kind of step: use \"point\", \"check\", \"finding\"")]
    [InlineData("kind = \"check\"\n", "", "line 3: 'kind' is missing")]
    [InlineData("title = \"Look\"", "titel = \"Look\"", "line 18: there is no key 'titel' here")]
    [InlineData("gate = true", "gate = \"yes\"", "line 11: 'gate' is true or false")]
    [InlineData("code = \"wheel\"", "code = \"Wheel 1\"", "line 22: 'Wheel 1' is no name: use up to 40 lower-case letters")]
    [InlineData("title = \"Two looks\"", "title = ", "is not TOML")]
    [InlineData("title = \"Two looks\"\n", "", "Plan 'two-looks': 'title' is missing: say what the plan is called")]
    public void Plan_ThatDoesNotHold_IsRefusedByLineAndKey(string written, string instead, string sentence)
    {
        var toml = Sound.ReplaceLineEndings("\n").Replace(written, instead, StringComparison.Ordinal);
        Assert.NotEqual(Sound.ReplaceLineEndings("\n"), toml);
        if (sentence.Length == 0)
        {
            Assert.Equal("crank-end-play", PlanReader.Read("two-looks", toml).Steps[1].Point);   // a limit of its own makes a gate of any point
            return;
        }

        var refusal = Assert.Throws<PlanException>(() => PlanReader.Read("two-looks", toml));

        Assert.Contains(refusal.Problems, problem => problem.Contains(sentence, StringComparison.Ordinal));
        Assert.All(refusal.Problems, problem => Assert.StartsWith("Plan 'two-looks'", problem, StringComparison.Ordinal));
    }

    [Fact]
    public void Gate_WithoutAnyLimit_IsRefused()
    {
        var refusal = Assert.Throws<PlanException>(() => PlanReader.Read("p", "title = \"P\"\n[[step]]\ncode = \"crank-end-play\"\nkind = \"point\"\ngate = true\n"));

        Assert.Contains("line 5: step 'crank-end-play' is a gate but has nothing to be held against", Assert.Single(refusal.Problems), StringComparison.Ordinal);
    }

    [Fact]
    public void Problems_AreToldAllAtOnce()
    {
        var refusal = Assert.Throws<PlanException>(() => PlanReader.Read("p", "[[step]]\ncode = \"a\"\nkind = \"check\"\n[[step]]\ncode = \"a\"\nkind = \"check\"\nafter = [\"b\"]\n"));

        Assert.Equal(5, refusal.Problems.Count);   // three titles, a name twice, an unknown step
    }

    // A search along every path would take 2^40 steps.
    [Fact]
    public void Plan_WhoseStepsAllWaitForAllOthersBelow_IsRefusedAtOnce()
    {
        const int Steps = 40;
        var toml = "title = \"P\"\n" + string.Concat(Enumerable.Range(0, Steps).Select(n =>
            $"[[step]]\ncode = \"s{n}\"\nkind = \"check\"\ntitle = \"S\"\nafter = [{string.Join(", ", Enumerable.Range(n + 1, Steps - n - 1).Select(m => $"\"s{m}\""))}]\n"));

        var refusal = Assert.Throws<PlanException>(() => PlanReader.Read("p", toml));

        Assert.Equal(Steps * (Steps - 1) / 2, refusal.Problems.Count(problem => problem.Contains("which stands below it", StringComparison.Ordinal)));
    }
}
