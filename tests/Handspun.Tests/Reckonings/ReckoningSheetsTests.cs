using Handspun.Jobs.Lengths;
using Handspun.Metrology.Reckonings;
using Handspun.Reckonings;

namespace Handspun.Tests.Reckonings;

public sealed class ReckoningSheetsTests
{
    // Common practice, no source: a bolt-in cam of 0.573 in lift has its springs checked against their own numbers. 2.050 − 1.440 − 0.573 = 0.037.
    [Fact]
    public void Springs_UnderABoltInCam_AreCheckedAgainstTheirOwnNumbers()
    {
        var answer = Work("spring-room", ("installed_height", "2.050"), ("coil_bind", "1.440"), ("valve_lift", "0.573"), ("known", "0.005"));

        Assert.Null(answer.Missing);
        Assert.Equal("2.0500 in \u2212 1.4400 in \u2212 0.5730 in = 0.0370 in ± 0.0087 in", Assert.Single(answer.Lines).Filled(ShownUnit.Inches));
        Assert.Contains(answer.Cautions, caution => caution.Contains("bolt-in does not prove", StringComparison.Ordinal));
    }

    // Movement in one turn from ASME B1.1: 5/16-24 moves 1/24 in.
    [Theory]
    [InlineData("5/16-24", "")]
    [InlineData("another", "24")]
    public void Pushrod_ByAThread_TurnsAsFarAsItsPitchSays(string thread, string perInch)
    {
        var answer = Work("pushrods", ("preload", "0.100"), ("known", "0.005"), ("thread", thread), ("per_inch", perInch));

        Assert.Equal("0.1000 in ÷ 0.0417 in = 2.40 turns ± 0.12 turns", answer.Lines[0].Filled(ShownUnit.Inches));
        Assert.Contains(answer.Cautions, caution => caution.Contains("both pushrods of that cylinder turn freely", StringComparison.Ordinal));
        Assert.Contains(answer.Cautions, caution => caution.Contains("never with a grinder", StringComparison.Ordinal));
    }

    [Fact]
    public void Lash_IsThePlayAtThePitchCircle() => Assert.Equal(
        "0.0060 in × 1.0000 in ÷ 1.5000 in = 0.0040 in ± 0.0007 in",
        Assert.Single(Work("gear-lash", ("play", "0.006"), ("pitch_radius", "1.0"), ("indicator_radius", "1.5"), ("known", "0.001")).Lines).Filled(ShownUnit.Inches));

    [Theory]
    [InlineData("spring-room", "installed_height", "abc", "is no length")]
    [InlineData("spring-room", "installed_height", "2.05", "how well the lengths were measured")]
    [InlineData("spring-room", "known", "0.005", "installed height is missing")]
    [InlineData("pushrods", "per_inch", "many", "is no number")]
    [InlineData("pushrods", "thread", "5/16-24", "wanted preload is missing")]
    [InlineData("gear-lash", "play", "0.1 mm", "how well the lengths")]
    public void Reckoning_ThatCannotBe_SaysWhatToType(string reckoning, string name, string text, string sentence)
    {
        var answer = Work(reckoning, (name, text));

        Assert.Empty(answer.Lines);
        Assert.Contains(sentence, answer.Missing, StringComparison.Ordinal);
        Assert.NotEmpty(answer.Cautions);
    }

    [Fact]
    public void Springs_TypedInTheWrongUnit_AreNotReckoned()
    {
        var answer = ReckoningSheets.Work(ReckoningSheets.Find("spring-room")!, Typed(("installed_height", "2.05"), ("coil_bind", "1.44"), ("valve_lift", "0.573"), ("known", "0.005")), LengthUnit.Millimetre);

        Assert.Contains("looks like inches", answer.Missing, StringComparison.Ordinal);
    }

    [Fact]
    public void EveryReckoning_WithNothingTyped_AsksForSomething() => Assert.All(ReckoningSheets.All, sheet =>
    {
        var answer = ReckoningSheets.Work(sheet, new Dictionary<string, string?>(), LengthUnit.Inch);
        Assert.Empty(answer.Lines);
        Assert.EndsWith(".", answer.Missing, StringComparison.Ordinal);
    });

    private static Reckoning Work(string code, params (string Name, string Text)[] typed) => ReckoningSheets.Work(ReckoningSheets.Find(code)!, Typed(typed), LengthUnit.Inch);

    private static Dictionary<string, string?> Typed(params (string Name, string Text)[] typed) => typed.ToDictionary(pair => pair.Name, pair => (string?)pair.Text);
}
