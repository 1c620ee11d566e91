using System.Buffers;
using Handspun.Gauges.Journal;
using Handspun.Gauges.Links;
using Handspun.Gauges.Listening;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Trying;

/// <summary>Listens to an unknown gauge in every way in which some profile would, each for a while.</summary>
/// <remarks>First it only listens. What asks a gauge for readings is sent only where nothing that was heard before made sense.</remarks>
public sealed class ListeningTrial(ILinkOpener opener, TimeProvider time)
{
    private static readonly TimeSpan AskEvery = TimeSpan.FromMilliseconds(250);

    private readonly GaugeClock _clock = new(time);

    /// <summary>The wall clock at the moment from which the times of what was heard count.</summary>
    public DateTimeOffset Zero => _clock.StartedAt;

    /// <summary>The ways to listen at a port: profiles that would listen alike stand together, those that ask come last.</summary>
    /// <param name="port">Where.</param>
    /// <param name="profiles">The profiles that come into question.</param>
    public static IReadOnlyList<IReadOnlyList<GaugeProfile>> Ways(GaugePort port, IEnumerable<GaugeProfile> profiles)
    {
        var isHid = port is GaugePort.Hid or GaugePort.HidNode;
        var isLine = port is GaugePort.Serial or GaugePort.Usb;
        return [.. profiles
            .Where(profile => profile.Hid is not null == isHid)
            .GroupBy(profile => (Line: isLine ? profile.Link : new LinkSettings(), Asked: Convert.ToHexString(profile.Request.Send.Span), Started: Convert.ToHexString(profile.Request.Start.Span)))
            .OrderBy(way => way.Key.Asked.Length + way.Key.Started.Length > 0)
            .Select(way => way.ToList())];
    }

    /// <summary>Listens in one way.</summary>
    /// <param name="port">Where.</param>
    /// <param name="way">Profiles that would listen alike.</param>
    /// <param name="span">How long.</param>
    /// <param name="cancellationToken">Stops it before its time.</param>
    /// <exception cref="LinkUnavailableException">The port cannot be opened; says why and what to do.</exception>
    public async Task<HeardStretch> ListenAsync(GaugePort port, IReadOnlyList<GaugeProfile> way, TimeSpan span, CancellationToken cancellationToken)
    {
        var (line, request) = (way[0].Link with { Hid = null }, way[0].Request);
        await using var link = await opener.OpenAsync(port, line, cancellationToken);
        var entries = new List<JournalEntry> { new JournalEntry.Event(_clock.Now, JournalEntry.LinkOpened, null) };
        if (!link.ReportDescriptor.IsEmpty)
        {
            entries.Add(new JournalEntry.Event(_clock.Now, JournalEntry.ReportDescriptor, Convert.ToHexString(link.ReportDescriptor.Span)));
        }

        using var over = new CancellationTokenSource(span, time);
        using var either = CancellationTokenSource.CreateLinkedTokenSource(over.Token, cancellationToken);
        var speech = new GaugeSpeech(link, request.OnDemand && request.Every is null ? request with { Every = AskEvery } : request, time);
        var speaking = speech.RunAsync(either.Token);
        var started = _clock.Now;
        await HearAsync(link, entries, either.Token);
        await either.CancelAsync();
        await speaking.ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        await speech.StopAsync();
        cancellationToken.ThrowIfCancellationRequested();
        return new(way, entries, _clock.Now - started);
    }

    private async Task HearAsync(IGaugeLink link, List<JournalEntry> entries, CancellationToken over)
    {
        try
        {
            while (true)
            {
                var read = await link.Input.ReadAsync(over);
                if (!read.Buffer.IsEmpty)
                {
                    entries.Add(new JournalEntry.Chunk(_clock.Now, read.Buffer.ToArray()));
                }

                link.Input.AdvanceTo(read.Buffer.End);
                if (read.IsCompleted)
                {
                    return;
                }
            }
        }
        catch (Exception e) when (e is OperationCanceledException or IOException or ObjectDisposedException)
        {
            // Its time is over, or the cable went out: what was heard until then counts.
        }
    }
}
