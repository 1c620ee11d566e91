using Handspun.Gauges.Links;
using Handspun.Gauges.Profiles;
using Handspun.Station;

namespace Handspun.Tests.Station;

public sealed class GaugeOptionTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("gauges-").FullName;

    private ProfileShelf Shelf => new(Path.Combine(_folder, "profiles"), ProfileShelf.ShippedFolder);

    private string GaugesFile => Path.Combine(_folder, "gauges.toml");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("pinion=text-line@/dev/ttyUSB0", "pinion", "text-line", "/dev/ttyUSB0")]
    [InlineData("left-end=text-line-inch@tcp://127.0.0.1:4001", "left-end", "text-line-inch", "tcp://127.0.0.1:4001")]
    [InlineData("a=b@/dev/by@id", "a", "b", "/dev/by@id")]
    public void Parse_OfTheCommandLinesForm_TakesItApart(string text, string name, string profile, string port) =>
        Assert.Equal(new GaugeOption(name, profile, port), GaugeOption.Parse(text));

    [Theory]
    [InlineData("pinion")]
    [InlineData("=text-line@/dev/ttyUSB0")]
    [InlineData("pinion=@/dev/ttyUSB0")]
    [InlineData("pinion=text-line@")]
    [InlineData("pinion@/dev/ttyUSB0")]
    public void Parse_OfAnythingElse_SaysTheForm(string text) =>
        Assert.Contains("NAME=PROFILE@PORT", Assert.Throws<StationTroubleException>(() => GaugeOption.Parse(text)).Message, StringComparison.Ordinal);

    [Fact]
    public void ReadFile_WithTwoGauges_GivesBoth()
    {
        File.WriteAllText(GaugesFile, """
            [[gauge]]
            name = "pinion"
            profile = "text-line"
            port = "/dev/ttyUSB0"

            [[gauge]]
            name = "drive-side"
            profile = "text-line-inch"
            port = "COM3"
            """);

        var gauges = GaugeOption.Resolve(GaugeOption.ReadFile(GaugesFile), Shelf);

        Assert.Equal(["pinion", "drive-side"], gauges.Select(gauge => gauge.Name.ToString()));
        Assert.Equal(new GaugePort.Serial("COM3"), gauges[1].Port);
    }

    [Fact]
    public void ReadFile_ThatIsNotThere_GivesNone() => Assert.Empty(GaugeOption.ReadFile(GaugesFile));

    [Theory]
    [InlineData("[[gauge]]\nname = \"pinion\"\n", "profile")]
    [InlineData("[[gauge]]\nname = \"pinion\"\nprofile = \"text-line\"\nport = \"COM3\"\nbaud = 9600\n", "'baud'")]
    [InlineData("[[gauges]]\nname = \"pinion\"\n", "[[gauge]]")]
    [InlineData("gauge = 5\n", "[[gauge]]")]
    [InlineData("[[gauge]\n", "not TOML")]
    public void ReadFile_ThatDoesNotHold_SaysWhatIsWrong(string text, string words)
    {
        File.WriteAllText(GaugesFile, text);

        var trouble = Assert.Throws<StationTroubleException>(() => GaugeOption.ReadFile(GaugesFile));

        Assert.Contains(words, trouble.Message, StringComparison.Ordinal);
        Assert.Equal(StationTroubleException.Usage, trouble.ExitCode);
    }

    [Fact]
    public void Resolve_OfManyWrongGauges_TellsAllAtOnce()
    {
        GaugeOption[] gauges =
        [
            new("pinion", "no-such", "/dev/ttyUSB0"),
            new("Pinion", "text-line", "/dev/ttyUSB0"),
            new("left", "text-line", "tcp://nowhere"),
            new("left", "text-line", "COM3"),
        ];

        var lines = Assert.Throws<StationTroubleException>(() => GaugeOption.Resolve(gauges, Shelf)).Message.Split(Environment.NewLine);

        Assert.Equal(4, lines.Length);
        Assert.Contains(lines, line => line.Contains("no profile 'no-such': use one of ", StringComparison.Ordinal));
        Assert.Contains(lines, line => line.Contains("'Pinion' is no name", StringComparison.Ordinal));
        Assert.Contains(lines, line => line.Contains("'tcp://nowhere' is no port", StringComparison.Ordinal));
        Assert.Contains(lines, line => line.Contains("Two gauges are called 'left'", StringComparison.Ordinal));
    }

    [Fact]
    public void Resolve_WithAProfileOfTheShopsOwn_TakesIt()
    {
        Directory.CreateDirectory(Path.Combine(_folder, "profiles"));
        File.WriteAllText(Path.Combine(_folder, "profiles", "ours.toml"), "title = \"Ours\"\n[link]\nbaud = 19200\n");

        var gauge = Assert.Single(GaugeOption.Resolve([new("pinion", "ours", "COM3")], Shelf));

        Assert.Equal(19200, gauge.Profile.Link.Baud);
    }
}
