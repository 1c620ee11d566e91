using Handspun.Metrology.Quantities;
using Handspun.Metrology.Reckonings;

namespace Handspun.Metrology.Tests.Reckonings;

public class SpringRoomTests
{
    [Fact]
    public void SpringRoom_ToCoilBind_IsWhatIsLeftWithAllThreeDoubts()
    {
        var answer = SpringRoom.ToCoilBind(In(1.95, 0.01), In(1.25, 0.006), In(0.5, 0.008)).Answer!;

        Assert.Equal(0.2 * 25.4, answer.Result.Value, 1e-9);
        Assert.Equal(25.4 * Math.Sqrt(0.01 * 0.01 + 0.006 * 0.006 + 0.008 * 0.008), answer.U95.Value, 1e-9);
        Assert.Equal("1.9500 in − 1.2500 in − 0.5000 in = 0.2000 in ± 0.0141 in", answer.Filled(ShownUnit.Inches));
        Assert.Equal("49.530 mm − 31.750 mm − 12.700 mm = 5.080 mm ± 0.359 mm", answer.Filled(ShownUnit.Millimetres));
    }

    // Common practice, no source: a bolt-in cam of 0.573 in lift has its springs checked against their own numbers, not taken on trust.
    // The same cam fits one spring and binds another, and without that spring's own numbers there is no answer.
    [Fact]
    public void SpringRoom_UnderABoltInCamOf573Thousandths_HangsOnTheSpringsOwnNumbers()
    {
        var lift = In(0.573, 0);

        Assert.True(SpringRoom.ToCoilBind(In(1.95, 0), In(1.20, 0), lift).Answer!.Result.Value > 0);
        Assert.Equal("−0.0230 in", SpringRoom.ToCoilBind(In(1.85, 0), In(1.30, 0), lift).Answer!.Result.Text(ShownUnit.Inches));
        var untold = SpringRoom.ToCoilBind(In(1.95, 0), null, lift);
        Assert.Null(untold.Answer);
        Assert.Contains("coil bind is missing", untold.Missing, StringComparison.Ordinal);
        Assert.Contains(untold.Cautions, caution => caution.Contains("bolt-in", StringComparison.Ordinal));
    }

    [Fact]
    public void SpringRoom_ToSeal_IsTheDistanceLessTheLift()
    {
        var answer = SpringRoom.ToSeal(Mm(15.5, 0.2), Mm(13.5, 0.1)).Answer!;

        Assert.Equal(2, answer.Result.Value, 1e-12);
        Assert.Equal(Math.Sqrt(0.05), answer.U95.Value, 1e-12);
    }

    [Fact]
    public void SpringRoom_OfWhatCannotBe_SaysWhatToDo()
    {
        Assert.Contains("installed height is missing", SpringRoom.ToCoilBind(null, Mm(30, 0), Mm(13, 0)).Missing, StringComparison.Ordinal);
        Assert.Contains("valve lift is missing", SpringRoom.ToCoilBind(Mm(49, 0), Mm(30, 0), null).Missing, StringComparison.Ordinal);
        Assert.Contains("looks like inches", SpringRoom.ToCoilBind(Mm(1.95, 0), Mm(30, 0), Mm(13, 0)).Missing, StringComparison.Ordinal);
        Assert.Contains("not less than", SpringRoom.ToCoilBind(Mm(40, 0), Mm(41, 0), Mm(13, 0)).Missing, StringComparison.Ordinal);
        Assert.Contains("uncertainty", SpringRoom.ToCoilBind(Mm(49, -1), Mm(30, 0), Mm(13, 0)).Missing, StringComparison.Ordinal);
        Assert.Contains("retainer to seal is missing", SpringRoom.ToSeal(null, Mm(13, 0)).Missing, StringComparison.Ordinal);
    }

    [Fact]
    public void SpringRoom_Always_WarnsOfTheSpringsLoad() =>
        Assert.Contains(SpringRoom.ToSeal(null, null).Cautions, caution => caution.Contains("under load", StringComparison.Ordinal));

    private static Measured<Length> Mm(double value, double u95) => new(Length.FromMillimetres(value), Length.FromMillimetres(u95));

    private static Measured<Length> In(double value, double u95) => new(Length.FromInches(value), Length.FromInches(u95));
}
