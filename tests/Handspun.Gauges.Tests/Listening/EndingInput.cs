using System.IO.Pipelines;

namespace Handspun.Gauges.Tests.Listening;

/// <summary>What comes over a link that ends as a driver ends it: the trouble comes after all that was sent, where a pipe of its own would forget what was not read yet.</summary>
internal sealed class EndingInput(PipeReader sent) : PipeReader
{
    /// <summary>What the link ends with; null for an end without trouble.</summary>
    public Exception? Trouble { get; set; }

    public override async ValueTask<ReadResult> ReadAsync(CancellationToken cancellationToken = default) => Told(await sent.ReadAsync(cancellationToken));

    public override bool TryRead(out ReadResult result)
    {
        var isThere = sent.TryRead(out result);
        result = isThere ? Told(result) : result;
        return isThere;
    }

    public override void AdvanceTo(SequencePosition consumed) => sent.AdvanceTo(consumed);

    public override void AdvanceTo(SequencePosition consumed, SequencePosition examined) => sent.AdvanceTo(consumed, examined);

    public override void CancelPendingRead() => sent.CancelPendingRead();

    public override void Complete(Exception? exception = null) => sent.Complete(exception);

    private ReadResult Told(ReadResult read)
    {
        if (!read.IsCompleted || Trouble is not { } trouble)
        {
            return read;
        }

        if (read.Buffer.IsEmpty)
        {
            sent.AdvanceTo(read.Buffer.End);
            throw trouble;
        }

        return new ReadResult(read.Buffer, read.IsCanceled, isCompleted: false);
    }
}
