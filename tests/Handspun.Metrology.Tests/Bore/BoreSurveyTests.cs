using Handspun.Metrology.Bore;
using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Tests.Bore;

public class BoreSurveyTests
{
    // Closed form: an ellipse that is 8 µm wider one way, in a cone that widens by 5 µm from top to bottom.
    [Fact]
    public void Form_OfAnOvalCone_IsItsTaperAndOval()
    {
        BorePlace[] places =
        [
            .. from depth in (double[])[5, 25, 45]
               from clock in (double[])[0, 3]
               select Place(depth, clock, 21.4 + 0.005 * (depth - 5) / 40 + (clock == 0 ? 0.008 : 0), u95: 0.001),
        ];

        var form = BoreSurvey.Of(places, Length.FromMillimetres(0.002));

        Assert.Equal(21.4 + 0.004 + 0.0025, form.Size.Millimetres, 1e-12);
        Assert.Equal(0.005, form.Taper!.Value.Millimetres, 1e-12);
        Assert.Equal(0.008, form.OutOfRound!.Value.Millimetres, 1e-12);
        Assert.Equal(0.001, form.TaperU95!.Value.Millimetres, 1e-12);   // √2 of a mean of two, each 1 µm
        Assert.Equal(0.001 * Math.Sqrt(2), form.OutOfRoundU95!.Value.Millimetres, 1e-12);
        Assert.Equal(Math.Sqrt(0.001 * 0.001 / 6 + 0.002 * 0.002), form.SizeU95.Millimetres, 1e-12);
        Assert.Equal(45, form.Largest.Depth.Millimetres);
        Assert.Equal(5, form.Smallest.Depth.Millimetres);
        Assert.Contains("widens downward", form.Sentence, StringComparison.Ordinal);
        Assert.Contains("out of round", form.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Form_OfOnePlace_KnowsNeitherTaperNorOutOfRound()
    {
        var form = BoreSurvey.Of([Place(10, 0, 21.4, 0.001)], Length.Zero);

        Assert.Null(form.Taper);
        Assert.Null(form.OutOfRound);
        Assert.Equal(0.001, form.SizeU95.Millimetres, 1e-12);
    }

    [Fact]
    public void Form_WithinItsUncertainty_IsNotCalledTaperOrOval()
    {
        var form = BoreSurvey.Of([Place(5, 0, 21.4, 0.002), Place(5, 3, 21.401, 0.002), Place(40, 0, 21.4005, 0.002)], Length.Zero);

        Assert.Contains("No taper beyond", form.Sentence, StringComparison.Ordinal);
        Assert.Contains("no out-of-round beyond", form.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Form_OfNothing_IsRefused() => Assert.Throws<ArgumentException>(() => BoreSurvey.Of([], Length.Zero));

    private static BorePlace Place(double depth, double clock, double size, double u95) =>
        new(Length.FromMillimetres(depth), clock, Length.FromMillimetres(size), Length.FromMillimetres(u95));
}
