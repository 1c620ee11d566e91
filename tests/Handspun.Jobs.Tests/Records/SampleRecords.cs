using Handspun.Jobs.Limits;
using Handspun.Jobs.Records;
using Handspun.Metrology.Decision;

namespace Handspun.Jobs.Tests.Records;

/// <summary>Records to test with.</summary>
internal static class SampleRecords
{
    public static DateTimeOffset Start { get; } = new(2026, 3, 14, 9, 26, 53, 589, TimeSpan.Zero);

    public static Limit Limit { get; } = new() { UpperMillimetres = 0.127, Source = "invented manual, page 12", ConfirmedBy = "A. Nobody" };

    public static CaptureRecord Complete(string id, double minutes = 0, int point = 0) => new()
    {
        Id = id,
        JobPointId = point,
        At = Start.AddMinutes(minutes),
        Seconds = 12.75,
        Ending = CaptureEnding.Enough,
        Status = RecordStatus.Complete,
        Gauge = new RecordGauge { Name = "pinion", Profile = "bench", Port = "/dev/ttyUSB0", ResolutionMillimetres = 0.001, ErrorLimitMillimetres = 0.003 },
        Limit = Limit with { },
        Figures = new RunoutFigures
        {
            Readings = 380,
            Rejected = 2,
            Turns = 3.25,
            TirMillimetres = 0.0508,
            TirU95Millimetres = 0.0051,
            EccentricityMillimetres = 0.0249,
            RoundnessMillimetres = 0.0042,
            ZoneRoundnessMillimetres = 0.0041,
            CircumscribedRoundnessMillimetres = 0.0046,
            InscribedRoundnessMillimetres = 0.0044,
            HighSpotDegrees = 123.4,
            HighSpotU95Degrees = 3.2,
            LowSpotDegrees = 301.5,
            AngleReference = "mark",
            TirByTurnMillimetres = [0.0504, 0.0515, 0.0507],
            TirWithFaultsMillimetres = 0.0683,
            Faults =
            [
                new FaultFigures
                {
                    Kind = "raised",
                    AtDegrees = 202.4,
                    WidthDegrees = 7.2,
                    HeightMillimetres = 0.0214,
                    HeightU95Millimetres = 0.0011,
                    SeenOnTurns = 3,
                    OfTurns = 3,
                    Sentence = "Clean it.",
                },
            ],
        },
        Verdict = Verdict.Within,
        ProbabilityOutside = 1.25e-9,
        Warnings = [RecordWarning.GaugeGap, new RecordWarning("few-turns", "Only \"three\" turns – µ.")],
    };

    public static CaptureRecord Measured(string id, ResultFigures figures, Limit? limit, Verdict? verdict, double minutes = 0) => new()
    {
        Id = id,
        At = Start.AddMinutes(minutes),
        Seconds = 8,
        Ending = CaptureEnding.Enough,
        Status = RecordStatus.Complete,
        Gauge = new RecordGauge { Name = "pinion", Profile = "bench", Port = "/dev/ttyUSB0" },
        Limit = limit is null ? null : limit with { },
        Figures = figures,
        Verdict = verdict,
    };

    public static CaptureRecord Incomplete(string id, double minutes = 0, int point = 0) => new()
    {
        Id = id,
        JobPointId = point,
        At = Start.AddMinutes(minutes),
        Seconds = 2,
        Ending = CaptureEnding.StoodStill,
        Status = RecordStatus.Incomplete,
        Missing = "About 0.4 of a turn was seen.",
        Gauge = new RecordGauge { Name = "pinion", Profile = "bench", Port = "/dev/ttyUSB0" },
        Figures = new RunoutFigures { Readings = 60, Turns = 0.4 },
    };
}
