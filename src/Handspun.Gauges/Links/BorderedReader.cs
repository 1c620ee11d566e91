using System.Buffers;
using System.IO.Pipelines;

namespace Handspun.Gauges.Links;

/// <summary>A reader that hands on chunks one at a time and never joins two that came apart.</summary>
/// <remarks>What a reader leaves is in front of the next chunk, as in any pipe. One reader at a time.</remarks>
/// <param name="next">Waits for the next chunk; an empty one is the end.</param>
internal sealed class BorderedReader(Func<CancellationToken, ValueTask<ReadOnlyMemory<byte>>> next) : PipeReader
{
    private const int Room = 256;

    private byte[] _pending = new byte[Room];
    private int _length;
    private bool _looked = true;
    private bool _ended;

    /// <inheritdoc/>
    public override async ValueTask<ReadResult> ReadAsync(CancellationToken cancellationToken = default)
    {
        if (_looked && !_ended)
        {
            Add(await next(cancellationToken));
        }

        return Result();
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
    public override void CancelPendingRead() => throw new NotSupportedException("Cancel by the token that the read was given.");

    /// <inheritdoc/>
    public override void Complete(Exception? exception = null)
    {
        _ended = true;
        _length = 0;
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

    private ReadResult Result() => new(new ReadOnlySequence<byte>(_pending, 0, _length), isCanceled: false, _ended);
}
