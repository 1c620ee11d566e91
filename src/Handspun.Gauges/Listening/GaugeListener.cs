using System.Buffers;
using Handspun.Gauges.Decoding;
using Handspun.Gauges.Journal;
using Handspun.Gauges.Links;
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

    /// <summary>A listener that has not started.</summary>
    public GaugeListener(GaugeSetup setup, ILinkOpener opener, RollingJournal journal, GaugeClock clock, GaugeFeed feed, TimeProvider time, ILogger logger)
    {
        (_setup, _opener, Journal, _clock, _feed, _time, _logger) = (setup, opener, journal, clock, feed, time, logger);
        _tally = new GaugeTally(setup, clock, feed);
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

    private async Task ListenOnceAsync(CancellationToken stopping)
    {
        await using var link = await _opener.OpenAsync(_setup.Port, _setup.Profile.Link, stopping);
        var decoder = new ReadingDecoder(_setup.Profile);
        var opened = _clock.Now;
        Journal.AppendEvent(opened, JournalEntry.LinkOpened);
        decoder.LinkOpened(opened);
        _tally.Become(GaugeCondition.Silent, GaugeSentence.Opened(_setup));
        ListeningLog.Opened(_logger, _setup.Name, _setup.Port);
        try
        {
            await PumpAsync(link, decoder, stopping);
        }
        catch (Exception e) when (e is not JournalException && !(e is OperationCanceledException && stopping.IsCancellationRequested))
        {
            ListeningLog.Failed(_logger, _setup.Name, e.Message);   // how a pulled cable shows itself differs from driver to driver
        }

        Journal.AppendEvent(_clock.Now, JournalEntry.LinkLost);
        _tally.Become(GaugeCondition.Lost, GaugeSentence.Lost(_setup));
        ListeningLog.Lost(_logger, _setup.Name, _setup.Port);
    }

    private async Task PumpAsync(IGaugeLink link, ReadingDecoder decoder, CancellationToken stopping)
    {
        var held = 0L;
        while (true)
        {
            var read = await link.Input.ReadAsync(stopping);
            var at = _clock.Now;
            var pending = read.Buffer;
            if (pending.Length > held)
            {
                Journal.Append(at, pending.Slice(held));
                Decode(ref pending, decoder, at);
                held = pending.Length;
            }

            link.Input.AdvanceTo(pending.Start, pending.End);
            if (read.IsCompleted)
            {
                return;
            }
        }
    }

    private void Decode(ref ReadOnlySequence<byte> pending, ReadingDecoder decoder, TimeSpan at)
    {
        var unreadable = decoder.Unreadable;
        var readings = new List<Reading>(1);
        decoder.Decode(ref pending, at, readings);
        _tally.Count(readings.Count, decoder.Unreadable - unreadable, at);
        if (readings.Count > 0)
        {
            _tally.Become(GaugeCondition.Reading, GaugeSentence.Reading(_setup));
            _feed.Publish(new GaugeEvent.Heard(_setup.Name, readings));
        }
        else if (decoder.Unreadable > unreadable && _tally.State.Condition == GaugeCondition.Silent)
        {
            _tally.Become(GaugeCondition.Silent, GaugeSentence.Unreadable(_setup));
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
