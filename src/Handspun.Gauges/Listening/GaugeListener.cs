using System.Buffers;
using Handspun.Gauges.Decoding;
using Handspun.Gauges.Journal;
using Handspun.Gauges.Links;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Readings;
using Microsoft.Extensions.Logging;

namespace Handspun.Gauges.Listening;

/// <summary>Listens to one gauge for as long as the station runs: opens its port, journals, decodes, hands on, and opens again when the cable was out.</summary>
/// <remarks>Bytes are stamped and journalled before they are decoded. A port that is not there is asked for again, less and less often, never in a busy loop.</remarks>
public sealed class GaugeListener
{
    private static readonly TimeSpan Silence = TimeSpan.FromSeconds(2);
    private static readonly TimeSpan TickEvery = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan SyncEvery = TimeSpan.FromMilliseconds(200);   // a crash of the machine loses at most a quarter second
    private static readonly TimeSpan FirstPause = TimeSpan.FromMilliseconds(250);
    private static readonly TimeSpan LongestPause = TimeSpan.FromSeconds(2);

    private readonly GaugeSetup _setup;
    private readonly ILinkOpener _opener;
    private readonly GaugeClock _clock;
    private readonly GaugeFeed _feed;
    private readonly TimeProvider _time;
    private readonly ILogger _logger;
    private readonly GaugeTally _tally;
    private readonly IndexGate _index;
    private readonly Lock _arrivals = new();   // what is stamped first is journalled first
    private volatile GaugeSpeech? _speech;

    /// <summary>A listener that has not started.</summary>
    public GaugeListener(GaugeSetup setup, ILinkOpener opener, RollingJournal journal, GaugeClock clock, GaugeFeed feed, TimeProvider time, ILogger logger)
    {
        (_setup, _opener, Journal, _clock, _feed, _time, _logger) = (setup, opener, journal, clock, feed, time, logger);
        _tally = new GaugeTally(setup, clock, feed);
        _index = new IndexGate(setup.Profile.Index?.Debounce ?? TimeSpan.Zero);
    }

    /// <summary>The gauge.</summary>
    public GaugeSetup Setup => _setup;

    /// <summary>Its running journal.</summary>
    public RollingJournal Journal { get; }

    /// <summary>How the gauge is now.</summary>
    public GaugeState State => _tally.State;

    /// <summary>Listens until told to stop.</summary>
    public async Task RunAsync(CancellationToken stopping)
    {
        using var scope = _logger.BeginScope(new Dictionary<string, object> { ["Gauge"] = _setup.Name.ToString() });
        var ticking = EveryAsync(TickEvery, () => _tally.Tick(Silence), stopping);
        var syncing = EveryAsync(SyncEvery, Sync, stopping);
        var pause = FirstPause;
        while (!stopping.IsCancellationRequested)
        {
            try
            {
                await ListenOnceAsync(stopping);
                pause = FirstPause;
            }
            catch (OperationCanceledException) when (stopping.IsCancellationRequested)
            {
                break;
            }
            catch (LinkUnavailableException e)
            {
                Refused(e);
            }
            catch (JournalException e)
            {
                // Nothing is decoded or shown that was not journalled first.
                ListeningLog.NotJournalled(_logger, _setup.Name, e);
                _tally.Become(GaugeCondition.Offline, e.Message);
            }
            catch (Exception e)
            {
                // One gauge's trouble, whatever it is, must not end the listening for good and in silence.
                ListeningLog.Stumbled(_logger, _setup.Name, e);
                _tally.Become(GaugeCondition.Absent, GaugeSentence.Stumbled(_setup, e));
            }

            if (!await PauseAsync(pause, stopping))
            {
                break;
            }

            pause = pause * 2 < LongestPause ? pause * 2 : LongestPause;
        }

        await Task.WhenAll(ticking, syncing);
        _tally.Become(GaugeCondition.Offline, GaugeSentence.Offline(_setup));
    }

    /// <summary>Asks the gauge for a reading, as a pedal or a button does.</summary>
    /// <exception cref="GaugeRefusalException">It sends by itself, or is not there.</exception>
    public async Task AskAsync(CancellationToken cancellationToken)
    {
        if (!_setup.Profile.Request.OnDemand)
        {
            throw new GaugeRefusalException($"Gauge '{_setup.Name}' is not asked for readings: its profile '{_setup.Profile.Name}' names nothing to send.");
        }

        try
        {
            await (_speech?.AskAsync(cancellationToken) ?? throw new IOException(State.Sentence));
        }
        catch (Exception e) when (e is IOException or ObjectDisposedException)
        {
            throw new GaugeRefusalException($"Gauge '{_setup.Name}' could not be asked: {e.Message}");
        }
    }

    /// <summary>Notes an index pulse that somebody else saw: a key, a sensor on the broker.</summary>
    /// <param name="source">Who saw it.</param>
    /// <exception cref="GaugeRefusalException">The gauge's index comes from somewhere else, or it has none.</exception>
    /// <exception cref="JournalException">The disk does not take it.</exception>
    public void Pulse(IndexSource source)
    {
        var name = IndexSettings.NameOf(source);
        if (_setup.Profile.Index?.Source != source)
        {
            throw new GaugeRefusalException($"Gauge '{_setup.Name}' takes no index from '{name}': write [index] and source = \"{name}\" into its profile '{_setup.Profile.Name}'.");
        }

        Pulse(name);
    }

    /// <summary>Puts something that happened now into the journal.</summary>
    /// <returns>When it happened, on the gauge clock.</returns>
    /// <exception cref="JournalException">The disk does not take it.</exception>
    public TimeSpan Note(string name, string? detail = null)
    {
        lock (_arrivals)
        {
            var at = _clock.Now;
            Journal.AppendEvent(at, name, detail);
            return at;
        }
    }

    private async Task ListenOnceAsync(CancellationToken stopping)
    {
        await using var link = await _opener.OpenAsync(_setup.Port, _setup.Profile.Link, stopping);
        var decoder = new ReadingDecoder(_setup.Profile);
        decoder.LinkOpened(Note(JournalEntry.LinkOpened));
        if (!link.ReportDescriptor.IsEmpty)
        {
            Note(JournalEntry.ReportDescriptor, Convert.ToHexString(link.ReportDescriptor.Span));
            decoder.LinkDescribed(link.ReportDescriptor);
        }

        _tally.Become(GaugeCondition.Silent, GaugeSentence.Opened(_setup));
        ListeningLog.Opened(_logger, _setup.Name, _setup.Port);
        try
        {
            await ConverseAsync(link, decoder, stopping);
        }
        catch (Exception e) when (e is not JournalException && !(e is OperationCanceledException && stopping.IsCancellationRequested))
        {
            ListeningLog.Failed(_logger, _setup.Name, e.Message);   // how a pulled cable shows itself differs from driver to driver
        }

        Note(JournalEntry.LinkLost);
        _tally.Become(GaugeCondition.Lost, GaugeSentence.Lost(_setup));
        ListeningLog.Lost(_logger, _setup.Name, _setup.Port);
    }

    // Hearing and speaking go on side by side, and the end of either is the end of both.
    private async Task ConverseAsync(IGaugeLink link, ReadingDecoder decoder, CancellationToken stopping)
    {
        var speech = new GaugeSpeech(link, _setup.Profile.Request, _time);
        using var closing = CancellationTokenSource.CreateLinkedTokenSource(stopping);
        using var watch = _setup.Profile.Index is { IsInTheBytes: false } index ? link.WatchPulses(index, OnPulse) : null;
        var hearing = PumpAsync(link, decoder, closing.Token);
        var speaking = speech.RunAsync(closing.Token);
        _speech = speech;
        try
        {
            var first = await Task.WhenAny(hearing, speaking);
            await closing.CancelAsync();
            await first;
        }
        finally
        {
            _speech = null;
            await Task.WhenAll(hearing, speaking).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
            if (stopping.IsCancellationRequested)
            {
                await speech.StopAsync();
            }
        }
    }

    private async Task PumpAsync(IGaugeLink link, ReadingDecoder decoder, CancellationToken stopping)
    {
        var held = 0L;
        var input = link.Input;
        await using var silence = _time.CreateTimer(_ => input.CancelPendingRead(), null, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
        while (true)
        {
            if (held > 0 && decoder.FrameEndsAfter is { } gap)
            {
                silence.Change(gap, Timeout.InfiniteTimeSpan);
            }

            var read = await input.ReadAsync(stopping);
            var pending = read.Buffer;
            if (pending.Length > held)
            {
                var at = Keep(pending.Slice(held));
                Decode(ref pending, decoder, at, decoder.Decode);
            }
            else if (held > 0)
            {
                Decode(ref pending, decoder, _clock.Now, decoder.EndAfterSilence);
            }

            held = pending.Length;
            input.AdvanceTo(pending.Start, pending.End);
            if (read.IsCompleted)
            {
                return;
            }
        }
    }

    private delegate void Decoding(ref ReadOnlySequence<byte> pending, TimeSpan at, ICollection<Reading> readings);

    private TimeSpan Keep(in ReadOnlySequence<byte> bytes)
    {
        lock (_arrivals)
        {
            var at = _clock.Now;
            Journal.Append(at, bytes);
            return at;
        }
    }

    // A line's event comes on a thread on which nobody would catch anything.
    private void OnPulse(string source)
    {
        try
        {
            Pulse(source);
        }
        catch (JournalException e)
        {
            ListeningLog.NotJournalled(_logger, _setup.Name, e);
        }
    }

    private void Pulse(string source)
    {
        lock (_arrivals)
        {
            Admit(Note(JournalEntry.Index, source));
        }
    }

    private void Admit(TimeSpan at)
    {
        if (_index.Admits(at))
        {
            _tally.CountPulse();
            _feed.Publish(new GaugeEvent.Pulsed(_setup.Name, at));
        }
    }

    private void Decode(ref ReadOnlySequence<byte> pending, ReadingDecoder decoder, TimeSpan at, Decoding decode)
    {
        var (unreadable, switches) = (decoder.Unreadable, decoder.UnitSwitches);
        var readings = new List<Reading>(1);
        decode(ref pending, at, readings);
        _tally.Count(readings, decoder.Unreadable - unreadable, at);
        _tally.Describe(decoder.Flags, decoder.StatedUnit);
        if (decoder.UnitSwitches > switches)
        {
            Note(JournalEntry.UnitSwitched, decoder.StatedUnit == GaugeUnit.Inch ? "in" : "mm");
        }

        if (readings.Count > 0)
        {
            _tally.Become(GaugeCondition.Reading, GaugeSentence.Reading(_setup, decoder));
            _feed.Publish(new GaugeEvent.Heard(_setup.Name, readings));
        }

        if (decoder.Flags.HasFlag(GaugeFlags.Overrange))
        {
            _tally.Become(GaugeCondition.Silent, GaugeSentence.Overrange(_setup));
        }
        else if (decoder.Unreadable > unreadable && _tally.State.Condition == GaugeCondition.Silent)
        {
            _tally.Become(GaugeCondition.Silent, GaugeSentence.Unreadable(_setup));
        }

        TakePulses(decoder.Pulses);
    }

    private void TakePulses(IReadOnlyList<TimeSpan> pulses)
    {
        if (_setup.Profile.Index is not { IsInTheBytes: true })
        {
            return;
        }

        foreach (var at in pulses)
        {
            Admit(at);
        }
    }

    private void Refused(LinkUnavailableException refusal)
    {
        var condition = refusal.Fault == LinkFault.NotPermitted ? GaugeCondition.NotPermitted : GaugeCondition.Absent;
        if (_tally.State.Condition == GaugeCondition.Lost && refusal.Fault == LinkFault.Absent)
        {
            return;   // it was there: "plug it in again" says more than "there is no such port"
        }

        if (_tally.State.Sentence != refusal.Message)
        {
            ListeningLog.Refused(_logger, _setup.Name, refusal.Message);
        }

        _tally.Become(condition, refusal.Message);
    }

    private void Sync()
    {
        try
        {
            Journal.Sync();
        }
        catch (JournalException e)
        {
            ListeningLog.NotJournalled(_logger, _setup.Name, e);
        }
    }

    private async Task<bool> PauseAsync(TimeSpan pause, CancellationToken stopping)
    {
        try
        {
            await Task.Delay(pause, _time, stopping);
            return true;
        }
        catch (OperationCanceledException)
        {
            return false;
        }
    }

    private async Task EveryAsync(TimeSpan period, Action act, CancellationToken stopping)
    {
        using var timer = new PeriodicTimer(period, _time);
        try
        {
            while (await timer.WaitForNextTickAsync(stopping))
            {
                act();
            }
        }
        catch (OperationCanceledException)
        {
            // The station stops.
        }
    }
}
