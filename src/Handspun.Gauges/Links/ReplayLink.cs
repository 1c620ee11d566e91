using System.IO.Pipelines;
using Handspun.Gauges.Profiles;

namespace Handspun.Gauges.Links;

/// <summary>A journal in a gauge's stead, from one opening of the gauge's port to its loss.</summary>
internal sealed class ReplayLink(JournalPlayer player) : IGaugeLink
{
    /// <inheritdoc/>
    public PipeReader Input { get; } = new BorderedReader(player.NextAsync);

    /// <inheritdoc/>
    public ReadOnlyMemory<byte> ReportDescriptor { get; } = player.ReportDescriptor;

    /// <inheritdoc/>
    public IDisposable? WatchPulses(IndexSettings index, Action<string> pulse)
    {
        player.Pulse += pulse;
        return new Watch(player, pulse);
    }

    /// <inheritdoc/>
    public ValueTask DisposeAsync()
    {
        Input.Complete();
        return ValueTask.CompletedTask;
    }

    private sealed class Watch(JournalPlayer player, Action<string> pulse) : IDisposable
    {
        public void Dispose() => player.Pulse -= pulse;
    }
}
