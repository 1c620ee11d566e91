using Handspun.Jobs.Lengths;
using Handspun.Jobs.Plans;
using Handspun.Jobs.Plans.Reading;
using Handspun.Jobs.Plans.Writing;

namespace Handspun.Jobs.Tests.Plans;

public sealed class PlanSheetTests
{
    private const string Toml = """
        # Our own.
        title = "Three looks"

        # The first is the lift.
        [[step]]
        code = "a"
        kind = "check"
        title = "A"

        [[step]]
        code = "b"
        kind = "point"
        point = "pinion-runout"
        # held against what the shop found over the years
        [step.limit]
        at_most = "0.004 in"
        source = "invented manual, page 7"

        [[step]]
        code = "c"
        kind = "finding"
        title = "C"
        how = '''
        # no comment, but words
        look twice'''

        [[part]]
        code = "p"
        title = "P"
        """;

    [Fact]
    public void Text_CutAndPutTogether_IsThePlanThatItWas()
    {
        var sheet = PlanSheet.Of(Toml);

        Assert.Equal((3, 1), (sheet.Steps, sheet.Parts));
        Assert.Equal(Toml.ReplaceLineEndings("\n") + "\n", sheet.Text);
        Assert.StartsWith("# The first is the lift.\n[[step]]", sheet.StepText(0), StringComparison.Ordinal);
        Assert.EndsWith("page 7\"", sheet.StepText(1), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, 2, "b c a")]
    [InlineData(2, 0, "c a b")]
    [InlineData(1, 1, "a b c")]
    [InlineData(1, 2, "a c b")]
    public void Step_IsMoved_WithItsCommentsAndItsLimit(int from, int to, string order)
    {
        var moved = PlanSheet.Of(Toml).WithStepAt(from, to).Text;

        var plan = PlanReader.Read("p", moved);
        Assert.Equal(order.Split(' '), plan.Steps.Select(step => step.Code));
        Assert.Equal(0.1016, plan.Find("b")!.Limit!.UpperMillimetres!.Value, 1e-12);
        Assert.Contains("# The first is the lift.\n[[step]]\ncode = \"a\"", moved, StringComparison.Ordinal);
        Assert.StartsWith("# Our own.\n", moved, StringComparison.Ordinal);
        Assert.Single(plan.Parts);
    }

    [Fact]
    public void Step_TypedAnew_KeepsTheCommentsOnLinesOfTheirOwn()
    {
        var text = PlanSheet.Of(Toml).WithStep(1, new TypedStep { Code = "b", Kind = "point", Point = "pinion-runout", AtMost = "0,1 mm", Source = "page 8" }.ToToml()).Text;

        Assert.Contains("# held against what the shop found over the years\n[[step]]\ncode = \"b\"", text, StringComparison.Ordinal);
        Assert.Equal(0.1, PlanReader.Read("p", text).Find("b")!.Limit!.UpperMillimetres!.Value, 1e-12);
    }

    [Fact]
    public void Steps_AreAddedAtAnyPlaceAndTakenOut()
    {
        var added = PlanSheet.Of(Toml).WithNewStep(0, "[[step]]\ncode = \"x\"\nkind = \"check\"\ntitle = \"X\"").WithNewStep(4, "[[step]]\ncode = \"y\"\nkind = \"check\"\ntitle = \"Y\"");
        var without = added.WithoutStep(2).WithoutPart(0).WithNewPart("[[part]]\ncode = \"q\"\ntitle = \"Q\"");

        Assert.Equal(["x", "a", "b", "c", "y"], PlanReader.Read("p", added.Text).Steps.Select(step => step.Code));
        var plan = PlanReader.Read("p", without.Text);
        Assert.Equal(["x", "a", "c", "y"], plan.Steps.Select(step => step.Code));
        Assert.Equal("q", Assert.Single(plan.Parts).Code);
    }

    // What the form shows and sends back unchanged changes nothing.
    [Theory]
    [InlineData("cam-job")]
    [InlineData("bottom-end")]
    [InlineData("quick-runout")]
    public void ShippedPlan_WithEveryStepTypedAnew_IsTheSamePlan(string code)
    {
        var toml = File.ReadAllText(Path.Combine(PlanShelf.ShippedFolder, code + ".toml"));
        var plan = PlanReader.Read(code, toml);
        var sheet = PlanSheet.Of(toml);
        for (var place = 0; place < plan.Steps.Count; place++)
        {
            sheet = sheet.WithStep(place, TypedStep.Of(plan.Steps[place], LengthUnit.MillimetreHundredths).ToToml());
        }

        Assert.Equivalent(plan, PlanReader.Read(code, sheet.Text), strict: true);
    }

    [Fact]
    public void Step_WithWordsOfAnyKind_ReadsBackAsItWasTyped()
    {
        const string Words = "He said \"no\" <b>twice</b>, שלום\\ and\nwent # on";
        var typed = new TypedStep { Code = "a", Kind = "finding", Title = Words, How = Words, Places = ["left \"outer\"", "ימין"], Cautions = [Words] };

        var step = PlanReader.Read("p", "title = \"P\"\n" + typed.ToToml()).Steps[0];

        Assert.Equal((Words, Words), (step.Title, step.How));
        Assert.Equal(typed.Places, step.Places);
        Assert.Equal(Words, Assert.Single(step.Cautions));
    }

    [Theory]
    [InlineData("after = [\"nobody\"]", "after")]
    [InlineData("limit = { at_most = \"0.004\", source = \"x\" }", "at_most")]
    [InlineData("limit = { at_most = \"0.004 in\" }", "source")]
    [InlineData("limit = { at_most = \"0.004 in\", source = \"x\", drive = \"belt\" }", "at_most")]
    public void Problem_OfAStep_IsToldAtItsField(string line, string field)
    {
        var refusal = Assert.Throws<PlanException>(() => PlanReader.Read("p", $"title = \"P\"\n[[step]]\ncode = \"a\"\nkind = \"check\"\ntitle = \"A\"\n[[step]]\ncode = \"pinion-runout\"\nkind = \"point\"\n{line}\n"));

        Assert.Equal(field, TypedStep.FieldOf(refusal.Found[0], 1));
        Assert.Null(TypedStep.FieldOf(refusal.Found[0], 0));
    }

    [Theory]
    [InlineData("Oil pressure, 2nd look", "oil-pressure-2nd-look")]
    [InlineData("2 looks", "looks")]
    [InlineData("שלום", "step")]
    [InlineData("A", "a-3")]
    public void Title_GivesANameInData(string title, string code) => Assert.Equal(code, PlanCode.Of(title, "step", ["a", "a-2"]));
}
