using System.Collections.Concurrent;
using System.IO.Pipelines;
using System.Text;
using Handspun.Gauges.Links;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Tests.Listening;

/// <summary>A port at which, one opening after another, there is what the test put there; and nothing when that is used up.</summary>
internal sealed class ScriptedOpener(GaugeClock clock) : ILinkOpener
{
    public const string NothingThere = "There is nothing there: plug it in.";

    private readonly ConcurrentQueue<Func<IGaugeLink>> _script = new();
    private readonly ConcurrentQueue<TimeSpan> _opened = new();

    /// <summary>When it was tried to open the port.</summary>
    public IReadOnlyList<TimeSpan> Tries => [.. _opened];

    public ScriptedLink Plug()
    {
        var link = new ScriptedLink();
        _script.Enqueue(() => link);
        return link;
    }

    public void Refuse(Exception why) => _script.Enqueue(() => throw why);

    public Task<IGaugeLink> OpenAsync(GaugePort port, LinkSettings settings, CancellationToken cancellationToken)
    {
        cancellationToken.ThrowIfCancellationRequested();
        _opened.Enqueue(clock.Now);
        return Task.FromResult(_script.TryDequeue(out var next)
            ? next()
            : throw new LinkUnavailableException(LinkFault.Absent, NothingThere));
    }
}

/// <summary>A link whose far end the test holds.</summary>
internal sealed class ScriptedLink : IGaugeLink
{
    private readonly Pipe _pipe = new(new PipeOptions(pauseWriterThreshold: 0));
    private readonly EndingInput _input;

    public ScriptedLink() => _input = new(_pipe.Reader);

    public PipeReader Input => _input;

    public bool Disposed { get; private set; }

    /// <summary>What was sent to the gauge, one send an item.</summary>
    public ConcurrentQueue<string> Sent { get; } = new();

    /// <summary>What a send ends with; null for nothing.</summary>
    public Exception? SendingFails { get; set; }

    /// <summary>Makes a pulse on the line that is watched; null while none is.</summary>
    public Action<string>? Pulse { get; private set; }

    public ValueTask SendAsync(ReadOnlyMemory<byte> bytes, CancellationToken cancellationToken)
    {
        Sent.Enqueue(Encoding.Latin1.GetString(bytes.Span));
        return SendingFails is { } failure ? ValueTask.FromException(failure) : ValueTask.CompletedTask;
    }

    public IDisposable? WatchPulses(IndexSettings index, Action<string> pulse)
    {
        Pulse = pulse;
        return new Watched(this);
    }

    public async Task SendAsync(string text) => await _pipe.Writer.WriteAsync(Encoding.Latin1.GetBytes(text));

    /// <summary>Ends the link, as a driver does: with an exception or without one.</summary>
    public void Unplug(Exception? how = null)
    {
        _input.Trouble = how;
        _pipe.Writer.Complete();
    }

    public ValueTask DisposeAsync()
    {
        Disposed = true;
        return ValueTask.CompletedTask;
    }

    private sealed class Watched(ScriptedLink link) : IDisposable
    {
        public void Dispose() => link.Pulse = null;
    }
}
