using Handspun.Gauges.Links;
using Handspun.Gauges.Profiles;

namespace Handspun.Gauges.Tests.Links;

/// <summary>Pseudo-terminals have no modem lines, so a stand-in drives them here, just below where a real port's events come in.</summary>
public sealed class PulseWatchTests : IDisposable
{
    private readonly DrivenLines _lines = new();
    private readonly List<string> _pulses = [];

    public void Dispose() => _lines.Dispose();

    [Theory]
    [InlineData(ModemLine.Cts, "cts")]
    [InlineData(ModemLine.Dsr, "dsr")]
    [InlineData(ModemLine.Dcd, "dcd")]
    public void Line_ThatRisesAndFalls_PulsesOnceATime_AtTheEdgeThatCounts(ModemLine line, string name)
    {
        using var rising = Watch(line, falling: false);
        _lines.Drive(line, up: true);
        Assert.Equal([name], _pulses);
        _lines.Drive(line, up: false);
        Assert.Equal([name], _pulses);
        rising.Dispose();

        using var falling = Watch(line, falling: true);
        _lines.Drive(line, up: true);
        Assert.Equal([name], _pulses);
        _lines.Drive(line, up: false);
        Assert.Equal([name, name], _pulses);
    }

    [Fact]
    public void Ring_PulsesEachTime()
    {
        using var watch = Watch(ModemLine.Ri, falling: false);
        _lines.Drive(ModemLine.Ri, up: true);
        _lines.Drive(ModemLine.Ri, up: true);

        Assert.Equal(["ri", "ri"], _pulses);
    }

    [Fact]
    public void OtherLines_DoNotPulse_NorDoesAWatchThatHasEnded()
    {
        var watch = Watch(ModemLine.Cts, falling: false);
        _lines.Drive(ModemLine.Dsr, up: true);
        watch.Dispose();
        _lines.Drive(ModemLine.Cts, up: true);

        Assert.Empty(_pulses);
        Assert.True(_lines.Disposed);
    }

    [Fact]
    public async Task PseudoTerminal_HasNoLines_AndIsWatchedInPeace()
    {
        await using var pair = await PairedTerminals.OpenAsync();
        await using var link = await new LinkOpener(TimeProvider.System).OpenAsync(new GaugePort.Serial(pair.Station), new LinkSettings(), CancellationToken.None);
        using var watch = link.WatchPulses(new IndexSettings { Source = IndexSource.Line }, _pulses.Add);
        await pair.SendAsync(["+0.1\n"u8.ToArray()]);

        Assert.NotNull(watch);
        Assert.Equal("+0.1\n"u8.ToArray(), await LinkReading.BytesAsync(link, 5));
        Assert.Empty(_pulses);
    }

    private PulseWatch Watch(ModemLine line, bool falling) =>
        new(_lines, new IndexSettings { Source = IndexSource.Line, Line = line, Falling = falling }, _pulses.Add);

    private sealed class DrivenLines : IModemLines, IDisposable
    {
        private readonly HashSet<ModemLine> _up = [];

        public event Action<ModemLine>? Changed;

        public bool Disposed { get; private set; }

        public bool IsUp(ModemLine line) => _up.Contains(line);

        public void Drive(ModemLine line, bool up)
        {
            if (up)
            {
                _up.Add(line);
            }
            else
            {
                _up.Remove(line);
            }

            Changed?.Invoke(line);
        }

        public void Dispose() => Disposed = true;
    }
}
