using System.Text;
using Handspun.Finding;
using Handspun.Gauges.Finding;
using Handspun.Gauges.Journal;
using Handspun.Gauges.Links;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Trying;
using Handspun.Jobs.Lengths;
using Handspun.Station;
using Handspun.Terminal;

namespace Handspun.Tests.Finding;

public sealed class FindingTextTests
{
    private static readonly Paint Plain = new(colours: false);

    [Fact]
    public void List_NamesEachPort_ItsGauge_ItsHolders_AndWhatToDo()
    {
        PluggedPort[] ports =
        [
            new() { Device = "/dev/ttyUSB0", Port = new GaugePort.Usb(new UsbIdentity(0x1209, 0xF00D, "A1")), Title = "Bench converter" },
            new() { Device = "/dev/ttyUSB1", Port = new GaugePort.Serial("/dev/ttyUSB1"), Holders = [new PortHolder(4711, "terminal")] },
            new() { Device = "/dev/hidraw0", Port = new GaugePort.Hid(new UsbIdentity(0x1209, 1)), IsHid = true, MayOpen = false, Trouble = "No: do this." },
        ];

        var text = string.Join('\n', PluggedText.Of(ports, [new GaugeOption("pinion", "text-line", "usb:1209:f00d")], Plain));

        Assert.Equal(
            """
            Serial ports
              ✓ /dev/ttyUSB0  usb:1209:F00D:A1  Bench converter
                  gauge 'pinion', profile text-line
              ● /dev/ttyUSB1
                  held by terminal (process 4711)

            HID devices
              ✗ /dev/hidraw0  hid:1209:0001
                  No: do this.

            """,
            text);
        Assert.Equal("pinion", PluggedText.MessageOf(ports[0], [new GaugeOption("pinion", "text-line", "usb:1209:f00d")]).Gauge);
    }

    [Fact]
    public void List_OfNothing_SaysWhatToDo() =>
        Assert.Contains(PluggedText.Of([], [], Plain), line => line.Contains("plug its cable in", StringComparison.Ordinal));

    [Fact]
    public void List_WithAFreePort_SaysWhatIsNext() => Assert.Contains(
        "Next: handspun gauges --try COM3 listens there and proposes profiles.",
        PluggedText.Of([new() { Device = "COM3", Port = new GaugePort.Serial("COM3") }], [], Plain));

    [Fact]
    public void Proposals_AreInOrder_AndSayWhatToWriteDown()
    {
        Assert.True(GaugePort.TryParse("usb:1209:F00D:A1", out var port));
        var shelf = new ProfileShelf(ProfileShelf.ShippedFolder);
        var heard = new HeardStretch(
            [shelf.Find("text-line")],
            [.. Enumerable.Range(0, 10).Select(i => new JournalEntry.Chunk(TimeSpan.FromSeconds(0.2 + i), Encoding.ASCII.GetBytes("+0.254 mm\r\n")))],
            TimeSpan.FromSeconds(10));

        var lines = TrialText.Proposals([.. heard.Trials()], heard: true, port!, LengthUnit.Inch, Plain).ToList();

        Assert.Equal("  ✓ text-line  9 readings, 0.9 a second, 100 % of the frames  0.0100 to 0.0100 in", lines[1]);
        Assert.Contains("profile = \"text-line\"", lines[^1], StringComparison.Ordinal);
        Assert.Contains("port = \"usb:1209:F00D:A1\"", lines[^1], StringComparison.Ordinal);
        Assert.Equal("  ✓ 9600 baud 8N1, DTR on, RTS on: 110 bytes in 10.0 s, \"+0.254 mm\\r\\n+0.254 mm\\r\\n+0.254 mm\\r\\n+0.254 mm\\r\\n+0.2\"", TrialText.Way(heard, port!, Plain));
    }

    [Theory]
    [InlineData(false, "switch the gauge on")]
    [InlineData(true, "write one of your own")]
    public void Proposals_WhereThereAreNone_SayWhatToDo(bool heard, string words) =>
        Assert.Contains(words, Assert.Single(TrialText.Proposals([], heard, new GaugePort.Serial("COM3"), LengthUnit.Inch, Plain)), StringComparison.Ordinal);

    [Fact]
    public void Bytes_AreShownAsLettersWhereTheyAreSome() =>
        Assert.Equal("\"A\\r\\n\\x02\\\"\\\\\\xFF\"", TrialText.Shown([0x41, 13, 10, 2, (byte)'"', (byte)'\\', 255]));
}
