using System.Text.Json;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Records;
using Handspun.Metrology.Runout;

namespace Handspun.Jobs.Tests.Records;

public class RunoutFiguresTests
{
    [Fact]
    public void Figures_InWords_TellRoundnessTurnsAndFaults()
    {
        var shown = ((RunoutFigures)SampleRecords.Complete("c1").Figures).ToShow(LengthUnit.Millimetre).ToDictionary(figure => figure.Label, figure => figure.Text);

        Assert.Equal("0.004 mm (least squares), 0.004 mm (minimum zone)", shown["Out of round"]);
        Assert.Equal("0.005 mm (smallest around), 0.004 mm (largest inside)", shown["By other circles"]);
        Assert.Equal("0.050 to 0.052 mm", shown["Turn by turn"]);
        Assert.Equal("0.021 mm, 7° wide, on 3 of 3 turns. Clean it.", shown["At 202°"]);
        Assert.Equal("0.068 mm", shown["Runout with that in it"]);
    }

    [Fact]
    public void Figures_OfAnEnd_AreNoneWhereTheDirectionWasNotKept()
    {
        var kept = (RunoutFigures)SampleRecords.Complete("c1").Figures;

        Assert.Null(kept.ToEnd());
        var end = (kept with { EccentricityU95Millimetres = 0.001, EccentricityTowardDegrees = 120 }).ToEnd()!;
        Assert.Equal((0.0249, 0.001, 120, null, AngleReference.Mark), (end.Eccentricity.Millimetres, end.EccentricityU95.Millimetres, end.Toward.Degrees, end.TowardU95Degrees, end.Reference));
    }

    [Fact]
    public void Figures_ThatWereKeptBeforeFaultsWereLookedFor_SayNothingOfThem()
    {
        var kept = JsonSerializer.Deserialize<ResultFigures>("""{"kind":"runout","turns":3.25,"tir_mm":0.05,"tir_u95_mm":0.005,"readings":380,"rejected":2}""", FiguresJson.Options)!;

        var figures = Assert.IsType<RunoutFigures>(kept);
        Assert.Equal((null, null, null), (figures.Faults, figures.TirByTurnMillimetres, figures.ZoneRoundnessMillimetres));
        Assert.Equal(["Turns", "Readings"], figures.ToShow(LengthUnit.Inch).Select(figure => figure.Label));
    }
}
