using System.Buffers;
using System.Threading.Channels;
using Handspun.Gauges.Links;

namespace Handspun.Gauges.Tests.Links;

public class BorderedReaderTests
{
    private readonly Channel<ReadOnlyMemory<byte>> _chunks = Channel.CreateUnbounded<ReadOnlyMemory<byte>>();
    private readonly BorderedReader _reader;

    public BorderedReaderTests() => _reader = new BorderedReader(stopping => _chunks.Reader.ReadAsync(stopping));

    [Fact]
    public async Task Read_ThatIsCalledOff_GivesWhatIsThere_AndTheNextGoesOn()
    {
        Send([1, 2]);
        var first = await _reader.ReadAsync();
        _reader.AdvanceTo(first.Buffer.GetPosition(1), first.Buffer.End);
        var waiting = _reader.ReadAsync().AsTask();
        _reader.CancelPendingRead();

        var calledOff = await waiting.WaitAsync(Until.Cap);
        Assert.True(calledOff.IsCanceled);
        Assert.Equal([2], calledOff.Buffer.ToArray());
        _reader.AdvanceTo(calledOff.Buffer.Start, calledOff.Buffer.End);
        Send([3]);
        Assert.Equal([2, 3], (await _reader.ReadAsync()).Buffer.ToArray());
    }

    [Fact]
    public async Task Read_ThatIsCalledOffBeforeItStarts_DoesNotWait()
    {
        _reader.CancelPendingRead();

        Assert.True((await _reader.ReadAsync().AsTask().WaitAsync(Until.Cap)).IsCanceled);
        Send([1]);
        Assert.Equal([1], (await _reader.ReadAsync()).Buffer.ToArray());
    }

    [Fact]
    public async Task Read_WhoseTokenIsCancelled_Throws()
    {
        using var stopping = new CancellationTokenSource();
        var waiting = _reader.ReadAsync(stopping.Token).AsTask();
        await stopping.CancelAsync();

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => waiting.WaitAsync(Until.Cap));
    }

    [Fact]
    public async Task Bytes_ThatWereNotLookedAt_ComeAgainWithoutWaiting()
    {
        Send(new byte[1000]);
        var first = await _reader.ReadAsync();
        _reader.AdvanceTo(first.Buffer.GetPosition(10));

        Assert.Equal(990, (await _reader.ReadAsync().AsTask().WaitAsync(Until.Cap)).Buffer.Length);
    }

    [Fact]
    public async Task EmptyChunk_IsTheEnd()
    {
        Send([]);

        Assert.True((await _reader.ReadAsync()).IsCompleted);
        Assert.True((await _reader.ReadAsync()).IsCompleted);
    }

    private void Send(byte[] chunk) => Assert.True(_chunks.Writer.TryWrite(chunk));
}
