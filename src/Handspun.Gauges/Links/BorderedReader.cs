using System.Buffers;
using System.IO.Pipelines;

namespace Handspun.Gauges.Links;

/// <summary>A reader that hands on chunks one at a time and never joins two that came apart.</summary>
/// <remarks>What a reader leaves is in front of the next chunk, as in any pipe. One reader at a time.</remarks>
/// <param name="next">Waits for the next chunk; an empty one is the end.</param>
internal sealed class BorderedReader(Func<CancellationToken, ValueTask<ReadOnlyMemory<byte>>> next) : PipeReader
{
    private const int Room = 256;

    private readonly Lock _lock = new();
    private CancellationTokenSource? _waiting;
    private bool _canceled;
    private byte[] _pending = new byte[Room];
    private int _length;
    private bool _looked = true;
    private bool _ended;

    /// <inheritdoc/>
    public override async ValueTask<ReadResult> ReadAsync(CancellationToken cancellationToken = default)
    {
        return _looked && !_ended && !await WaitAsync(cancellationToken) ? Result(canceled: true) : Result();
    }

    /// <inheritdoc/>
    public override bool TryRead(out ReadResult result)
    {
        result = Result();
        return _ended || !_looked;
    }

    /// <inheritdoc/>
    public override void AdvanceTo(SequencePosition consumed) => AdvanceTo(consumed, consumed);

    /// <inheritdoc/>
    public override void AdvanceTo(SequencePosition consumed, SequencePosition examined)
    {
        var taken = consumed.GetInteger();
        _looked = examined.GetInteger() >= _length;
        _pending.AsSpan(taken, _length - taken).CopyTo(_pending);
        _length -= taken;
    }

    /// <inheritdoc/>
    public override void CancelPendingRead()
    {
        lock (_lock)
        {
            _canceled = _waiting is null;
            _ = _waiting?.CancelAsync();
        }
    }

    /// <inheritdoc/>
    public override void Complete(Exception? exception = null)
    {
        _ended = true;
        _length = 0;
    }

    // False where the wait was called off; then nothing has been taken.
    private async ValueTask<bool> WaitAsync(CancellationToken cancellationToken)
    {
        using var waiting = CancellationTokenSource.CreateLinkedTokenSource(cancellationToken);
        lock (_lock)
        {
            if (_canceled)
            {
                _canceled = false;
                return false;
            }

            _waiting = waiting;
        }

        try
        {
            Add(await next(waiting.Token));
            return true;
        }
        catch (OperationCanceledException) when (!cancellationToken.IsCancellationRequested)
        {
            return false;
        }
        finally
        {
            lock (_lock)
            {
                _waiting = null;
            }
        }
    }

    private void Add(ReadOnlyMemory<byte> chunk)
    {
        _ended = chunk.IsEmpty;
        if (_length + chunk.Length > _pending.Length)
        {
            Array.Resize(ref _pending, Math.Max(2 * _pending.Length, _length + chunk.Length));
        }

        chunk.Span.CopyTo(_pending.AsSpan(_length));
        _length += chunk.Length;
        _looked = _ended;
    }

    private ReadResult Result(bool canceled = false) => new(new ReadOnlySequence<byte>(_pending, 0, _length), canceled, _ended);
}
