using Handspun.Metrology.Quantities;
using Handspun.Pages;

namespace Handspun.Tests.Pages;

public sealed class LimitScaleTests
{
    [Fact]
    public void Scale_OfASizeBetweenItsLimits_IsDrawnAboutThem()
    {
        var scale = LimitScale.For(Mm(21.412), Mm(0.002), Mm(21.4), Mm(21.425))!;

        Assert.Equal(12.0 / 25, (scale.Value - scale.Lower!.Value) / (scale.Upper!.Value - scale.Lower.Value), 1e-9);
        Assert.InRange(scale.Lower.Value, 0.1, 0.3);
        Assert.InRange(scale.Upper.Value, 0.7, 0.9);
    }

    [Fact]
    public void Scale_OfASizeFarOutsideItsLimits_ShowsBoth()
    {
        var scale = LimitScale.For(Mm(21.5), Mm(0.002), Mm(21.4), Mm(21.425))!;

        Assert.InRange(scale.Lower!.Value, 0, scale.Upper!.Value);
        Assert.InRange(scale.Value, scale.Upper.Value, 1);
    }

    [Theory]
    [InlineData(0.126)]   // ever so close to its limit
    [InlineData(0.02)]
    public void Scale_OfARunout_StartsAtZero(double tir)
    {
        var scale = LimitScale.For(Mm(tir), Mm(0.002), null, Mm(0.127))!;

        Assert.Equal(tir / 0.127, scale.Value / scale.Upper!.Value, 1e-9);
    }

    [Fact]
    public void Scales_OfTwoResults_AreOneAndTheSame()
    {
        var (one, other) = ((Mm(0.05), Mm(0.004)), (Mm(0.2), Mm(0.01)));
        var a = LimitScale.Together(one, other, (null, Mm(0.127)), (null, Mm(0.127)));
        var b = LimitScale.Together(other, one, (null, Mm(0.127)), (null, Mm(0.127)));

        Assert.Equal(a.Upper!.Value, b.Upper!.Value, 1e-12);
        Assert.Equal(4, b.Value / a.Value, 1e-9);   // 0.2 to 0.05, from zero
        Assert.InRange(b.To, b.Value, 1);
    }

    [Fact]
    public void Scales_OfTwoSizes_LieAboutThem()
    {
        var a = LimitScale.Together((Mm(21.412), Mm(0.002)), (Mm(21.42), Mm(0.002)), (null, null), (null, null));

        Assert.InRange(a.From, 0.05, 0.3);
        Assert.InRange(a.To - a.From, 0.1, 0.4);
    }

    private static Length Mm(double millimetres) => Length.FromMillimetres(millimetres);
}
