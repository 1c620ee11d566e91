using System.Text;
using Handspun.Gauges.Links;
using Handspun.Gauges.Tests.Framing;
using Handspun.Gauges.Tests.Journal;

namespace Handspun.Gauges.Tests.Links;

public sealed class SerialLinkTests : IDisposable
{
    private static readonly LinkOpener Opener = new(TimeProvider.System);

    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task Link_ReadsEveryByte_InOrder_WhateverThePieces()
    {
        await using var pair = await PairedTerminals.OpenAsync();
        await using var link = await OpenAsync(pair.Station, new LinkSettings { DataTerminalReady = true, RequestToSend = false });
        byte[] sent = [.. Enumerable.Range(0, 256).Select(value => (byte)value), .. Encoding.ASCII.GetBytes(string.Concat(Enumerable.Range(0, 500).Select(i => $"+0.{i:D4} mm\r\n")))];

        var sending = pair.SendAsync(Chunks.Of(sent, 1, 7, 3, 64, 13));
        var read = await LinkReading.BytesAsync(link, sent.Length);
        await sending;

        Assert.Equal(sent, read);
    }

    [Fact]
    public async Task Link_WhenItsCableIsPulled_Ends_AndOpensAgainWhenItIsBack()
    {
        await using (var pair = await PairedTerminals.OpenAsync())
        {
            await using var link = await OpenAsync(pair.Station);
            await pair.SendAsync(["+0.1\n"u8.ToArray()]);
            Assert.Equal("+0.1\n"u8.ToArray(), await LinkReading.BytesAsync(link, 5));
            var reading = LinkReading.ToTheEndAsync(link);
            await pair.UnplugAsync();

            Assert.Empty(await reading.WaitAsync(Until.Cap));
        }

        await using var back = await PairedTerminals.OpenAsync();
        await using var again = await OpenAsync(back.Station);
        await back.SendAsync(["+0.2\n"u8.ToArray()]);
        Assert.Equal("+0.2\n"u8.ToArray(), await LinkReading.BytesAsync(again, 5));
    }

    [Fact]
    public async Task Link_ThatNobodyWaitsForAnyMore_StopsReading()
    {
        await using var pair = await PairedTerminals.OpenAsync();
        await using var link = await OpenAsync(pair.Station);
        using var stopping = new CancellationTokenSource();
        var reading = link.Input.ReadAsync(stopping.Token).AsTask();
        await stopping.CancelAsync();

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => reading.WaitAsync(Until.Cap));
    }

    [Fact]
    public async Task Device_ThatIsNotThere_IsAbsent()
    {
        var refused = await Assert.ThrowsAsync<LinkUnavailableException>(() => OpenAsync(_folder.File("ttyUSB7")));

        Assert.Equal(LinkFault.Absent, refused.Fault);
        Assert.Equal($"There is no {_folder.File("ttyUSB7")}: plug the gauge in, or give the port that it is on.", refused.Message);
    }

    [Fact]
    public async Task Device_BehindALinkThatLeadsNowhere_IsAbsent()
    {
        File.CreateSymbolicLink(_folder.File("gauge"), _folder.File("ttyUSB7"));

        Assert.Equal(LinkFault.Absent, (await Assert.ThrowsAsync<LinkUnavailableException>(() => OpenAsync(_folder.File("gauge")))).Fault);
    }

    [Fact]
    public async Task Device_ThatIsAFile_IsNotAPort()
    {
        File.WriteAllText(_folder.File("file"), "+0.1\n");

        var refused = await Assert.ThrowsAsync<LinkUnavailableException>(() => OpenAsync(_folder.File("file")));
        Assert.Equal(LinkFault.NotAPort, refused.Fault);
        Assert.StartsWith($"{_folder.File("file")} does not open as a serial port: check", refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/dev/null")]
    [InlineData("/tmp")]
    public async Task Device_ThatIsSomethingElse_IsNotAPort(string device) =>
        Assert.Equal(LinkFault.NotAPort, (await Assert.ThrowsAsync<LinkUnavailableException>(() => OpenAsync(device))).Fault);

    // The operating system's own name for a port above COM9 is no name to System.IO.Ports, which then throws another exception.
    [Fact]
    public async Task Device_WithANameThatNoPortHas_IsToldAsTheOthersAre() =>
        Assert.Equal(LinkFault.Absent, (await Assert.ThrowsAsync<LinkUnavailableException>(() => OpenAsync(@"\\.\COM12"))).Fault);

    private static Task<IGaugeLink> OpenAsync(string device, LinkSettings? settings = null) =>
        Opener.OpenAsync(new GaugePort.Serial(device), settings ?? new LinkSettings(), CancellationToken.None);
}
