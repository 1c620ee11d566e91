using Handspun.Jobs.Cranks;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Records;
using Handspun.Metrology.ShaftLine;

namespace Handspun.Jobs.Tests.Cranks;

public class CrankAnswerTests
{
    // Both shafts lean toward the crankpin by 0.03/60 and 0.02/40: by similar triangles the lines stand at 0.1 mm in 100 mm to each
    // other and meet in the middle between the bearings.
    [Fact]
    public void Answer_OfTwoMeasuredEnds_HasTheAngleOfTheLinesAndTheWords()
    {
        var answer = CrankAnswer.Of(new MeasuredCrank().Job())!;

        Assert.Null(answer.Reason);
        Assert.Equal(0.1, answer.Lines!.Apart!.Kink.MillimetresPerHundred, 1e-9);
        Assert.Equal(0, answer.Lines.Apart.Offset.Millimetres, 1e-9);
        Assert.Equal(30, answer.Lines.Apart.KinkToward!.Value.Degrees, 1e-9);
        Assert.StartsWith("Both shafts are high on the crankpin's side: the flywheels stand open", answer.Lines.Sentence, StringComparison.Ordinal);
        Assert.EndsWith(ShaftLineMethod.Caution, answer.Lines.Sentence, StringComparison.Ordinal);
    }

    // High on opposite sides and square to the crankpin: one flywheel is turned on the pin against the other.
    [Fact]
    public void Answer_OfOppositeHighSpots_HasTheOffsetOfTheLines()
    {
        var answer = CrankAnswer.Of(new MeasuredCrank { Drive = MeasuredCrank.Off(0.03, 120), Pinion = MeasuredCrank.Off(0.02, 300) }.Job())!;

        Assert.Equal(0, answer.Lines!.Apart!.Kink.MillimetresPerHundred, 1e-9);
        Assert.Equal(0.06, answer.Lines.Apart.Offset.Millimetres, 1e-9);   // (0.0005 + 0.0005) × 120 / 2
        Assert.Contains("one flywheel is turned on the crankpin", answer.Lines.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Figures_OfTheLines_AreInTheShopsUnit()
    {
        var lines = CrankAnswer.Of(new MeasuredCrank().Job())!.Lines!;

        string[] labels = ["Drive side leans", "Pinion side leans", "Lines at an angle of", "Lines offset by"];
        Assert.Equal(labels, CrankFigures.Of(lines, LengthUnit.Inch).Select(figure => figure.Label));
        Assert.Matches(@"^0\.050 mm ± 0\.00\d mm over 100 mm, toward 30°$", CrankFigures.Of(lines, LengthUnit.Millimetre).First().Text);
        Assert.Matches(@"^0\.0020 in ± 0\.000\d in over 4 in, toward 30°$", CrankFigures.Of(lines, LengthUnit.Inch).First().Text);   // 0.0005 × 4 in
    }

    [Fact]
    public void Answer_OfAJobWithOneEnd_IsNone()
    {
        var job = new MeasuredCrank().Job();
        job.Points.RemoveAt(1);

        Assert.Null(CrankAnswer.Of(job));
    }

    [Fact]
    public void Answer_BeforeAllIsMeasuredAndTyped_SaysWhatToDoNext()
    {
        var made = new MeasuredCrank();
        (MeasuredCrank Crank, string Reason)[] cases =
        [
            (made with { Drive = null, Pinion = null }, "Measure the runout of both shaft ends, each from the same mark."),
            (made with { Drive = null }, "The drive side is still to be measured, from the same mark as the pinion side."),
            (made with { Pinion = null }, "The pinion side is still to be measured, from the same mark as the drive side."),
            (made with { Sheet = null }, "Type where the indicators stood and how far the bearings are apart."),
            (made with { Drive = new RunoutFigures { TirMillimetres = 0.06, TirU95Millimetres = 0.002, EccentricityMillimetres = 0.03 } }, "The drive side's record was made before the direction of the runout was kept: measure it again, from the same mark as the pinion side."),
        ];

        Assert.All(cases, each =>
        {
            var answer = CrankAnswer.Of(each.Crank.Job())!;
            Assert.Equal((null, each.Reason), (answer.Lines, answer.Reason));
        });
    }

    [Fact]
    public void Answer_WithoutACommonReference_HasSizesAndNoDirections()
    {
        var answer = CrankAnswer.Of(new MeasuredCrank { Drive = MeasuredCrank.Off(0.03, 30) with { AngleReference = "mark" } }.Job())!;

        Assert.Equal("The drive side's angle counts from the mark and the pinion side's from the index: measure both ends again from one and the same.", answer.Reason);
        Assert.Null(answer.Lines!.Apart);
        Assert.Equal(0.0005, answer.Lines.DriveSide!.Tilt.Ratio, 1e-12);
    }

    [Fact]
    public void Answer_WithoutTheCrankpin_SaysSoAndNothingAboutIt()
    {
        var made = new MeasuredCrank();
        var answer = CrankAnswer.Of((made with { Sheet = made.Sheet! with { CrankpinDegrees = null } }).Job())!;

        Assert.Equal("Where the crankpin stands was not noted, so nothing is said about it.", answer.Reason);
        Assert.Equal((HighSpots.SameSide, null), (answer.Lines!.HighSpots, answer.Lines.Against));
    }

    [Fact]
    public void Answer_RestsOnTheRecordThatCounts()
    {
        var job = new MeasuredCrank().Job();
        var other = new MeasuredCrank { Pinion = MeasuredCrank.Off(0.04, 30) }.Job().Points[0].Records[0];
        job.Points[0].Records.Add(new CaptureRecord
        {
            Id = "later",
            At = other.At.AddHours(1),
            Seconds = other.Seconds,
            Ending = other.Ending,
            Status = RecordStatus.Complete,
            Gauge = other.Gauge,
            Figures = other.Figures,
        });
        Assert.Equal(0.001, CrankAnswer.Of(job)!.Lines!.PinionSide!.Tilt.Ratio, 1e-12);

        job.Points[0].PickedRecordId = "pinion-runout";
        Assert.Equal(0.0005, CrankAnswer.Of(job)!.Lines!.PinionSide!.Tilt.Ratio, 1e-12);
    }
}
