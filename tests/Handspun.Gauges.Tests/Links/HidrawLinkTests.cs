using System.Buffers;
using Handspun.Gauges.Hid;
using Handspun.Gauges.Links;
using Handspun.Gauges.Tests.Hid;

namespace Handspun.Gauges.Tests.Links;

// No machine that builds has a HID device. A pipe in packet mode stands in for its borders, a pseudo-terminal for its end.
// Neither shows what the kernel does to a reader that is late, nor the error of a read from a device that is gone.
[Collection("hidraw")]   // it counts what is open
public sealed class HidrawLinkTests : IDisposable
{
    private const string Gauge = "hid:12AB:00CD";

    private readonly HidTree _tree = new();
    private readonly PacketPipe _pipe = new();

    public HidrawLinkTests() => _tree.Plug("hidraw0", "0003:000012AB:000000CD", "A7", behind: _pipe.Path);

    public void Dispose()
    {
        _tree.Dispose();
        _pipe.Dispose();
    }

    [Fact]
    public async Task Reports_ThatCameAtOnce_AreReadOneByOne()
    {
        await using var link = await OpenAsync(Gauge);
        var sent = Enumerable.Range(1, 300).Select(i => Enumerable.Range(i, 1 + i % 64).Select(value => (byte)value).ToArray()).ToList();
        foreach (var report in sent)
        {
            _pipe.Send(report);
        }

        foreach (var report in sent)
        {
            Assert.Equal(report, await ReportAsync(link));
        }
    }

    [Fact]
    public async Task Link_ByIdentityOrNode_TellsTheReportDescriptor()
    {
        foreach (var port in new[] { Gauge, "hid:12AB:00CD:A7", _tree.Node("hidraw0") })
        {
            await using var link = await OpenAsync(port);
            Assert.Equal(Descriptors.Bytes(Descriptors.Gauge), link.ReportDescriptor.ToArray());
            _pipe.Send(3, 1, 2);
            Assert.Equal([3, 1, 2], await ReportAsync(link));
        }
    }

    [Fact]
    public async Task Node_OfWhichTheKernelSaysNothing_IsReadAllTheSame()
    {
        File.CreateSymbolicLink(_tree.Node("hidraw7"), _pipe.Path);
        await using var link = await OpenAsync(_tree.Node("hidraw7"));
        _pipe.Send(9);

        Assert.Equal([9], await ReportAsync(link));
        Assert.True(link.ReportDescriptor.IsEmpty);
    }

    [Fact]
    public async Task Read_ThatIsGivenUp_Ends_AndLosesNothing()
    {
        await using var link = await OpenAsync(Gauge);
        using var giveUp = new CancellationTokenSource();
        var reading = link.Input.ReadAsync(giveUp.Token).AsTask();
        await giveUp.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => reading.WaitAsync(Until.Cap));

        _pipe.Send(1, 2);
        Assert.Equal([1, 2], await ReportAsync(link));
    }

    [Fact]
    public async Task Link_ThatIsClosed_EndsTheReadThatWaits()
    {
        var link = await OpenAsync(Gauge);
        var reading = LinkReading.ToTheEndAsync(link);
        await link.DisposeAsync().AsTask().WaitAsync(Until.Cap);

        Assert.Empty(await reading.WaitAsync(Until.Cap));
        await link.DisposeAsync();
    }

    [Fact]
    public async Task Link_ThatNobodyReads_ClosesAllTheSame()
    {
        var link = await OpenAsync(Gauge);
        for (var i = 0; i < 4100; i++)   // more than wait in the queue; the pipe itself holds the rest
        {
            _pipe.Send((byte)i);
        }

        await link.DisposeAsync().AsTask().WaitAsync(Until.Cap);
        Assert.Equal(2, _pipe.Opened);
    }

    [Fact]
    public async Task Cable_ThatIsPulled_EndsTheInput_AfterWhatCameBefore()
    {
        await using var pair = await PairedTerminals.OpenAsync();
        _tree.Plug("hidraw1", "0003:000012AB:000000CE", "", behind: pair.Station);
        await using var link = await OpenAsync("hid:12AB:00CE");
        await pair.SendAsync([[3, 7, 0]]);
        Assert.Equal([3, 7, 0], await ReportAsync(link));
        var reading = LinkReading.ToTheEndAsync(link);
        await pair.UnplugAsync();

        Assert.Empty(await reading.WaitAsync(Until.Cap));
        _tree.Unplug("hidraw1");
        Assert.Equal(LinkFault.Absent, (await Assert.ThrowsAsync<LinkUnavailableException>(() => OpenAsync("hid:12AB:00CE"))).Fault);
    }

    [Fact]
    public async Task Rounds_OfOpeningAndClosing_LeaveNothingOpen()
    {
        var signals = OpenFiles.Count("anon_inode:[eventfd]");
        for (var round = 0; round < 200; round++)
        {
            await using var link = await OpenAsync(Gauge);
            _pipe.Send((byte)round);
            Assert.Equal([(byte)round], await ReportAsync(link));
        }

        await Until.TrueAsync(() => OpenFiles.Threads("hidraw") == 0);
        Assert.Equal(2, _pipe.Opened);
        Assert.Equal(signals, OpenFiles.Count("anon_inode:[eventfd]"));
    }

    [Fact]
    public async Task Report_ToTheGauge_GoesOutWhole()
    {
        await using var pair = await PairedTerminals.OpenAsync();
        _tree.Plug("hidraw1", "0003:000012AB:000000CE", "", behind: pair.Station);
        await using var link = await OpenAsync("hid:12AB:00CE");
        await using var gauge = pair.OpenGauge(FileAccess.Read);
        await link.SendAsync(new byte[] { 0, 5, 6 }, CancellationToken.None);

        var heard = new byte[3];
        await gauge.ReadExactlyAsync(heard).AsTask().WaitAsync(Until.Cap);
        Assert.Equal([0, 5, 6], heard);
    }

    [Fact]
    public async Task Report_ToAGaugeThatIsGone_IsTold()
    {
        await using var pair = await PairedTerminals.OpenAsync();
        _tree.Plug("hidraw1", "0003:000012AB:000000CE", "", behind: pair.Station);
        await using var link = await OpenAsync("hid:12AB:00CE");
        await pair.UnplugAsync();
        await LinkReading.ToTheEndAsync(link).WaitAsync(Until.Cap);

        var refused = await Assert.ThrowsAnyAsync<Exception>(() => link.SendAsync(new byte[] { 0, 5 }, CancellationToken.None).AsTask());
        Assert.True(refused is IOException or ObjectDisposedException, refused.ToString());
    }

    [Fact]
    public async Task Device_WithNothingThatTheProfileNames_IsRefused()
    {
        var settings = new LinkSettings { Hid = new HidKeyboardFormat() };
        foreach (var port in new[] { Gauge, _tree.Node("hidraw0") })
        {
            var refused = await Assert.ThrowsAsync<LinkUnavailableException>(() => OpenAsync(port, settings));
            Assert.Equal(LinkFault.NotAPort, refused.Fault);
            Assert.Contains("Bench gauge = hidraw0", refused.Message, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Node_ThatIsNotThereOrIsNone_IsToldApart()
    {
        var absent = await Assert.ThrowsAsync<LinkUnavailableException>(() => OpenAsync(_tree.Node("hidraw8")));
        Assert.Equal(LinkFault.Absent, absent.Fault);
        Directory.CreateDirectory(_tree.Node("hidraw9"));
        var folder = await Assert.ThrowsAsync<LinkUnavailableException>(() => OpenAsync(_tree.Node("hidraw9")));
        Assert.Equal(LinkFault.NotAPort, folder.Fault);
        Assert.Contains("hidraw9 does not open as a HID device", folder.Message, StringComparison.Ordinal);
    }

    private Task<IGaugeLink> OpenAsync(string port, LinkSettings? settings = null)
    {
        Assert.True(GaugePort.TryParse(port, out var parsed));
        return new LinkOpener(TimeProvider.System, _tree.Roots).OpenAsync(parsed!, settings ?? new LinkSettings(), CancellationToken.None);
    }

    private static async Task<byte[]> ReportAsync(IGaugeLink link)
    {
        using var cap = new CancellationTokenSource(Until.Cap);
        var read = await link.Input.ReadAsync(cap.Token);
        var report = read.Buffer.ToArray();
        link.Input.AdvanceTo(read.Buffer.End);
        return report;
    }
}
