using System.Threading.Channels;
using Handspun.Bays;
using Handspun.Broker;
using Handspun.Capture.Bays;
using Handspun.Capture.Finishing;
using Handspun.Capture.Progress;
using Handspun.Gauges.Listening;
using Handspun.Jobs.Records;
using Handspun.Jobs.Store;
using Handspun.Station;
using Handspun.WorkedOut;

namespace Handspun.Filing;

/// <summary>Files each finished capture: journal, pictures, record in the store, result on the broker, in that order.</summary>
/// <remarks>Nothing is let go here: when it is behind, the bay's outbox waits.</remarks>
internal sealed class RecordFiler(
    RecordFolder folder,
    InterruptedCaptures interrupted,
    GaugeRoster gauges,
    JobStore store,
    ResultPublisher results,
    WorkedOutDesk workedOut,
    BaySteps steps,
    ILogger<RecordFiler> logger) : StationService, ICaptureReceiver
{
    private const int Waiting = 64;

    private readonly Channel<FinishedCapture> _queue = Channel.CreateBounded<FinishedCapture>(new BoundedChannelOptions(Waiting) { SingleReader = true });

    /// <inheritdoc/>
    public string Name => "The store";

    /// <inheritdoc/>
    public ValueTask ProgressAsync(CaptureProgress progress, CancellationToken cancellationToken) => ValueTask.CompletedTask;

    /// <inheritdoc/>
    public ValueTask StartedAsync(StartedCapture capture, CancellationToken cancellationToken)
    {
        interrupted.Note(capture);
        return ValueTask.CompletedTask;
    }

    /// <inheritdoc/>
    public ValueTask DroppedAsync(string capture, CancellationToken cancellationToken)
    {
        interrupted.Strike(capture);
        return ValueTask.CompletedTask;
    }

    /// <inheritdoc/>
    public ValueTask FinishedAsync(FinishedCapture capture, CancellationToken cancellationToken) => _queue.Writer.WriteAsync(capture, cancellationToken);

    /// <summary>Files what still waits, then ends.</summary>
    public override async Task StopAsync(CancellationToken cancellationToken)
    {
        _queue.Writer.TryComplete();
        if (ExecuteTask is { } filing)
        {
            await filing.WaitAsync(cancellationToken);
        }
    }

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        await RecoverAsync();
        await foreach (var capture in _queue.Reader.ReadAllAsync(CancellationToken.None))
        {
            using var hold = capture.JournalHold;
            await FileAsync(capture, gauges.Find(capture.Gauge.Name)!.Journal.Segments());
        }
    }

    private async Task RecoverAsync()
    {
        foreach (var lost in interrupted.Left())
        {
            try
            {
                var filed = await store.FindRecordAsync(lost.Capture, CancellationToken.None) is not null;
                if (!filed && lost.Reconstruct(folder.MakeRoomFor(lost.Capture)) is { } capture)
                {
                    await FileAsync(capture, lost.Segments);
                }
                else
                {
                    interrupted.Strike(lost.Capture);
                }
            }
            catch (Exception e) when (e is not OperationCanceledException)
            {
                FilingLog.NotRecovered(logger, lost.Capture, e);   // its marker and its journal stay where they are
            }
        }
    }

    private async Task FileAsync(FinishedCapture capture, IReadOnlyList<string> segments)
    {
        using var scope = logger.BeginScope(new Dictionary<string, object>
        {
            ["Job"] = capture.Task.Job,
            ["Capture"] = capture.Id,
            ["Gauge"] = capture.Gauge.Name.ToString(),
        });
        try
        {
            var record = RecordMaking.RecordOf(capture);
            folder.WriteJournal(capture, segments);
            DrawPictures(capture, record);
            var job = await store.AttachAsync(capture.Task.Job, capture.Task.Point, record, CancellationToken.None);
            interrupted.Strike(capture.Id);
            FilingLog.Filed(logger, capture.Id, capture.Task.Job, capture.Task.Point, RecordCodes.Of(record.Status));
            var point = job.Points.First(point => point.Code == capture.Task.Point);
            steps.Measured(capture.Task, point.Counting?.Id == record.Id ? NextPoint.After(job, point.Code) : null);   // before the result is told, so that who hears of it finds the step
            await results.PublishNewAsync(job, point, record, CancellationToken.None);
            await workedOut.RenewAsync(capture.Task.Job, capture.Task.Point, CancellationToken.None);
        }
        catch (Exception e) when (e is not OperationCanceledException)
        {
            FilingLog.NotFiled(logger, capture.Id, capture.Task.Job, e);   // the marker stays: the next start files it from the journal
        }
    }

    private void DrawPictures(FinishedCapture capture, CaptureRecord record)
    {
        try
        {
            folder.WritePictures(capture, record);
        }
        catch (Exception e)
        {
            FilingLog.NotDrawn(logger, capture.Id, e);   // a record without a picture is still a record
        }
    }
}
