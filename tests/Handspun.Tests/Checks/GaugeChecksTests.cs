using Handspun.Checks;
using Handspun.Gauges.Links;
using Handspun.Gauges.Profiles;
using Handspun.Station;

namespace Handspun.Tests.Checks;

public sealed class GaugeChecksTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("check-").FullName;

    private DataFolder Data => DataFolder.LookInto(_folder);

    private ProfileShelf Shelf => new(Data.Profiles, ProfileShelf.ShippedFolder);

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Shop_WithoutAGauge_IsToldHowToFindOne()
    {
        var line = Assert.Single(Check());

        Assert.Equal(CheckMark.Mind, line.Mark);
        Assert.Contains("handspun gauges", line.Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/dev/ttyUSB77", "failing", "There is no /dev/ttyUSB77: plug the gauge in")]
    [InlineData("usb:1209:F00D", "failing", "No serial device usb:1209:F00D is plugged in")]
    [InlineData("hid:1209:F00D", "failing", "No HID gauge hid:1209:F00D is plugged in")]
    [InlineData("replay:none.jsonl", "failing", "There is no journal none.jsonl")]
    [InlineData("tcp://gauge:4001", "ok", "is at tcp://gauge:4001")]
    [InlineData("/dev/null", "ok", "/dev/null is there")]
    public void Gauge_IsLookedForWhereItIsNamed(string port, string code, string words)
    {
        Name("pinion", port);

        var line = Assert.Single(Check());
        Assert.Equal(("Gauge 'pinion'", code), (line.Subject, line.Code));
        Assert.Contains(words, line.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Gauges_ThatAreNamedWrongly_FailOneByOne()
    {
        Name("pinion", "udp://nowhere");
        Name("pinion", "COM3");

        var lines = Check();
        Assert.Equal(2, lines.Count);
        Assert.All(lines, line => Assert.Equal(CheckMark.Failing, line.Mark));
    }

    private List<CheckLine> Check() => [.. new GaugeChecks(new DeviceRoots { Sysfs = _folder, Processes = _folder }).All(Data, Shelf)];

    private void Name(string name, string port) => File.AppendAllText(Data.Gauges, $"[[gauge]]\nname = \"{name}\"\nprofile = \"{(port.StartsWith("hid", StringComparison.Ordinal) ? "hid-report" : "text-line")}\"\nport = \"{port}\"\n");
}
