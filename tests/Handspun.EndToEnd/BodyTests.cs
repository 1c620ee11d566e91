using System.Globalization;
using System.Net.Http.Json;
using Handspun.EndToEnd.Parts;

namespace Handspun.EndToEnd;

/// <summary>A body's size through real parts: the gauge is set on a pin, the body rolled through under it, and the clearance takes its size.</summary>
public sealed class BodyTests
{
    private const string Body = "lifter-body-front-intake";
    private const double PinMillimetres = 21.382;
    private const double LargerMillimetres = 0.008;

    [Fact]
    public async Task Body_RolledThroughUnderAGauge_IsARecordWithItsSize_AndTheClearanceTakesIt()
    {
        await using var workshop = new Workshop();
        await workshop.StartGaugeAsync(more: ["--body-mm", Told(PinMillimetres + LargerMillimetres), "--body-off-mm", Told(LargerMillimetres)]);
        await workshop.StartStationAsync("--unit", "mm");
        await workshop.UntilGaugeIsAsync("reading");
        var job = await workshop.OpenJobAsync();
        await workshop.AddPointAsync(job, "lifter-bore-front-intake");
        await workshop.AddPointAsync(job, Body);
        var bore = new { value = "21.412 mm", tool = "inside micrometer", division = "0.002 mm", error_limit = "0.002 mm", by = "Ines" };
        (await workshop.Http.PostAsJsonAsync($"api/v1/jobs/{job}/points/lifter-bore-front-intake/entries", bore)).EnsureSuccessStatusCode();
        (await workshop.Http.PutAsJsonAsync($"api/v1/jobs/{job}/points/{Body}/setup", new { setting = "21.382 mm", setting_u95 = "0.001 mm" })).EnsureSuccessStatusCode();

        await workshop.MeasureAsync(job, Body);
        await Until.TrueAsync(async () => (await workshop.GetAsync("api/v1/bay")).GetProperty("phase").GetString() == "waiting");
        await workshop.TellGaugeAsync("roll 4");
        await workshop.UntilRecordsAsync(job, 1, Body);

        var record = Assert.Single(await workshop.RecordsAsync(job, Body));
        var (size, doubt) = (record.GetProperty("size_mm").GetDouble(), record.GetProperty("size_u95_mm").GetDouble());
        Assert.True(record.GetProperty("outside").GetBoolean());
        Assert.InRange(PinMillimetres + LargerMillimetres, size - doubt, size + doubt);

        // The same bytes, from the command line, with the pin that the journal remembers.
        var again = await workshop.AnalyzeAsync(record.GetProperty("record").GetString()!);
        Assert.Equal(size, again.GetProperty("size_mm").GetDouble(), 1e-6);
        Assert.Equal(doubt, again.GetProperty("size_u95_mm").GetDouble(), 1e-6);

        await workshop.UntilRecordsAsync(job, 1, "lifter-clearance-front-intake");
        var clearance = Assert.Single(await workshop.RecordsAsync(job, "lifter-clearance-front-intake"));
        Assert.Equal(21.412 - size, clearance.GetProperty("clearance_mm").GetDouble(), 1e-6);
    }

    private static string Told(double number) => number.ToString(CultureInfo.InvariantCulture);
}
