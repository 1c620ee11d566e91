using System.Reflection;
using System.Text.Json;
using System.Text.Json.Serialization;
using Handspun.Broker;
using Handspun.Capture.Bays;
using Handspun.Capture.Methods;
using Handspun.Capture.Methods.Runout;
using Handspun.Capture.Progress;
using Handspun.Gauges.Listening;
using Handspun.Gauges.Readings;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Metrology.Decision;
using Handspun.Metrology.Quantities;
using Handspun.Wire;
using Microsoft.Extensions.Time.Testing;

namespace Handspun.Tests.Wire;

/// <summary>Topics and messages are a public contract: a key that changes its name breaks somebody's screen.</summary>
public sealed class WireContractTests
{
    private static readonly GaugeName Pinion = GaugeName.Parse("pinion");

    private static readonly ResultFigures[] WithoutCapture =
    [
        new HandFigures { Named = "", Way = "", Typed = "", ReadBy = "", LengthMillimetres = 0, LengthU95Millimetres = 0 },
        new SizeFigures { Way = "", Typed = "", ReadBy = "", SizeMillimetres = 1, SizeU95Millimetres = 0 },
        new ClearanceFigures { ClearanceMillimetres = 0, ClearanceU95Millimetres = 0, BoreMillimetres = 1, BoreU95Millimetres = 0, BodyMillimetres = 1, BodyU95Millimetres = 0, BoreRecord = "", BodyRecord = "" },
        new TimingFigures { IntakeRecord = "", ExhaustRecord = "" },
    ];

    [Theory]
    [InlineData("readings", typeof(ReadingsMessage))]
    [InlineData("state", typeof(GaugeStateMessage))]
    [InlineData("progress", typeof(ProgressMessage))]
    [InlineData("result", typeof(ResultMessage))]
    public void AsyncApi_DescribesEveryKeyOfEveryMessage(string channel, Type message)
    {
        using var stream = typeof(Topics).Assembly.GetManifestResourceStream("asyncapi.json")!;
        var document = JsonDocument.Parse(stream).RootElement;

        var described = document.GetProperty("components").GetProperty("messages").GetProperty(channel).GetProperty("payload").GetProperty("properties").EnumerateObject().Select(property => property.Name);

        var common = message.GetProperties().Where(property => property.GetCustomAttribute<JsonExtensionDataAttribute>() is null)
            .Select(property => JsonNamingPolicy.SnakeCaseLower.ConvertName(property.Name));
        object[] ofKinds = channel switch
        {
            "progress" => [.. CaptureMethods.All.Select(method => method.Nothing.Live(default))],
            "result" => [.. CaptureMethods.All.Select(method => method.Nothing.Figures), .. WithoutCapture],
            _ => [],
        };
        Assert.Equal(common.Concat(ofKinds.SelectMany(figures => FlatFigures.Of(figures).Keys)).Distinct().Order(StringComparer.Ordinal), described.Order(StringComparer.Ordinal));   // in any order, as JSON has it
        var address = document.GetProperty("channels").GetProperty(channel).GetProperty("address").GetString()!;
        string[] topics = [Topics.Readings(Pinion), Topics.State(Pinion), Topics.Progress("c1"), Topics.Result("2026-0001", "pinion-runout")];
        Assert.Contains(address.Replace("{gauge}", "pinion", StringComparison.Ordinal).Replace("{capture}", "c1", StringComparison.Ordinal).Replace("{job}", "2026-0001", StringComparison.Ordinal).Replace("{point}", "pinion-runout", StringComparison.Ordinal), topics);
    }

    [Fact]
    public void Topics_AreWhatSubscribersRelyOn()
    {
        Assert.Equal("handspun/v1/gauges/pinion/readings", Topics.Readings(Pinion));
        Assert.Equal("handspun/v1/gauges/pinion/state", Topics.State(Pinion));
        Assert.Equal("handspun/v1/gauges/pinion/index", Topics.Index(Pinion));
        Assert.Equal("handspun/v1/captures/c1/progress", Topics.Progress("c1"));
        Assert.Equal("handspun/v1/jobs/2026-0001/points/pinion-runout/result", Topics.Result("2026-0001", "pinion-runout"));
    }

    [Theory]
    [InlineData("handspun/v1/gauges/pinion/index", true)]
    [InlineData("handspun/v1/gauges/pinion/state", false)]
    [InlineData("handspun/v1/gauges//index", false)]
    [InlineData("handspun/v1/gauges/index", false)]
    [InlineData("handspun/v1/gauges/a/b/index", false)]
    [InlineData("handspun/v1/gauges/Pinion/index", false)]
    [InlineData("handspun/v1/captures/pinion/index", false)]
    public void IndexTopic_IsReadWhereItNamesAGauge(string topic, bool read) =>
        Assert.Equal((read, read ? "pinion" : ""), (Topics.TryReadIndex(topic, out var gauge), gauge.ToString()));

    [Fact]
    public void Readings_AreABatchOfSecondsAndMillimetres()
    {
        var clock = new GaugeClock(new FakeTimeProvider(new DateTimeOffset(2026, 3, 14, 9, 0, 0, TimeSpan.Zero)));

        var message = ReadingsMessage.Of(clock, [Reading.FromInches(0.001, TimeSpan.FromSeconds(1.5)), Reading.FromMillimetres(-0.308, TimeSpan.FromSeconds(1.52))]);

        Assert.Equal(
            """{"t0":"2026-03-14T09:00:00+00:00","t":[1.5,1.52],"mm":[0.0254,-0.308]}""",
            JsonSerializer.Serialize(message, WireJson.Options));
    }

    [Fact]
    public void GaugeState_HasItsKeysAndCodes()
    {
        var clock = new GaugeClock(new FakeTimeProvider(new DateTimeOffset(2026, 3, 14, 9, 0, 0, TimeSpan.Zero)));
        var state = new GaugeState
        {
            Gauge = Pinion,
            Condition = GaugeCondition.NotPermitted,
            Sentence = "No.",
            Since = TimeSpan.FromSeconds(2),
            Profile = "text-line",
            Port = "COM3",
            Readings = 5,
            Unreadable = 1,
            LastReading = TimeSpan.FromSeconds(1.5),
            Pulses = 3,
        };

        Assert.Equal(
            """{"gauge":"pinion","state":"not-permitted","sentence":"No.","since":"2026-03-14T09:00:02+00:00","profile":"text-line","port":"COM3","readings":5,"unreadable":1,"unreadable_per_s":0,"readings_per_s":0,"last_reading":"2026-03-14T09:00:01.5+00:00","pulses":3,"not_sent":7}""",
            JsonSerializer.Serialize(GaugeStateMessage.Of(state, clock, notSent: 7), WireJson.Options));
    }

    [Fact]
    public void Progress_HasItsKeysAndCodes()
    {
        var progress = new CaptureProgress
        {
            Capture = "c1",
            Task = new BayTask { Job = "2026-0001", JobTitle = "", Bike = "", Point = "pinion-runout", PointTitle = "", Kind = PointKind.Runout, Wanted = 3, Gauge = Pinion },
            Phase = CapturePhase.Running,
            Started = TimeSpan.FromSeconds(1),
            Now = TimeSpan.FromSeconds(3),
            Count = 1.25,
            Value = Length.FromMillimetres(0.08),
            Warnings = [new RecordWarning("turning-too-fast", "Too fast.")],
            Live = new RunoutLive { Turns = 1.25, TurnsWanted = 3, TurnsPerSecond = 0.5, ReadingsPerTurn = 9, HiddenPeakMillimetres = 0.004825, LeastSecondsPerTurn = 12 / 4.5, SecondsToGo = 3.5, TirMillimetres = 0.08 },
            Sentence = "Keep turning.",
        };

        Assert.Equal(
            """{"capture":"c1","job":"2026-0001","point":"pinion-runout","kind":"runout","gauge":"pinion","phase":"running","started":1,"now":3,"readings":0,"count":1.25,"wanted":3,"value_mm":0.08,"value_u95_mm":null,"sentence":"Keep turning.","warnings":[{"code":"turning-too-fast","sentence":"Too fast."}],"turns":1.25,"turns_wanted":3,"turns_per_s":0.5,"readings_per_turn":9,"hidden_peak_mm":0.004825,"least_s_per_turn":2.666667,"s_to_go":3.5,"tir_mm":0.08,"tir_u95_mm":null}""",
            JsonSerializer.Serialize(ProgressMessage.Of(progress), WireJson.Options));
    }

    [Fact]
    public void Result_HasItsKeysAndCodes()
    {
        var record = new CaptureRecord
        {
            Id = "c1",
            At = new DateTimeOffset(2026, 3, 14, 9, 0, 0, TimeSpan.Zero),
            Seconds = 8,
            Ending = CaptureEnding.StoodStill,
            Status = RecordStatus.Complete,
            Gauge = new RecordGauge { Name = "pinion", Profile = "text-line", Port = "COM3" },
            Limit = new Limit { UpperMillimetres = 0.127, Source = "manual" },
            Figures = new RunoutFigures { Readings = 400, Turns = 3.2, TirMillimetres = 0.0762, TirU95Millimetres = 0.004 },
            Verdict = Verdict.Within,
            ProbabilityOutside = 0,
            Warnings = [RecordWarning.LimitUnconfirmed],
        };

        var json = JsonSerializer.SerializeToElement(ResultMessage.Of("2026-0001", "pinion-runout", record, LengthUnit.Inch), WireJson.Options);

        Assert.Equal(
            ["record", "job", "point", "kind", "capture", "gauge", "gauge_check", "at", "status", "ended", "value_title", "value_mm", "value_u95_mm", "verdict", "probability_over", "limit", "warnings", "missing", "sentence", "turns", "tir_mm", "tir_u95_mm", "eccentricity_mm", "eccentricity_u95_mm", "eccentricity_toward_deg", "eccentricity_toward_u95_deg", "roundness_mm", "zone_roundness_mm", "circumscribed_roundness_mm", "inscribed_roundness_mm", "high_spot_deg", "high_spot_u95_deg", "low_spot_deg", "angle_reference", "tir_by_turn_mm", "tir_with_faults_mm", "faults", "readings", "rejected"],
            json.EnumerateObject().Select(property => property.Name));
        Assert.Equal("ok", json.GetProperty("status").GetString());
        Assert.Equal("stood-still", json.GetProperty("ended").GetString());
        Assert.Equal("within", json.GetProperty("verdict").GetString());
        Assert.Equal("limit-unconfirmed", json.GetProperty("warnings")[0].GetProperty("code").GetString());
        Assert.False(json.GetProperty("limit").GetProperty("confirmed").GetBoolean());
        Assert.StartsWith("0.0030 in ± 0.0002 in: within the limit", json.GetProperty("sentence").GetString(), StringComparison.Ordinal);
    }
}
