using Handspun.Gauges.Profiles;

namespace Handspun.Gauges.Links;

/// <summary>Makes pulses of the edges of one modem line.</summary>
internal sealed class PulseWatch : IDisposable
{
    private readonly IModemLines _lines;
    private readonly IndexSettings _index;
    private readonly Action<string> _pulse;

    /// <summary>Calls back at every edge that counts, until it is disposed; the lines are disposed along with it.</summary>
    public PulseWatch(IModemLines lines, IndexSettings index, Action<string> pulse)
    {
        (_lines, _index, _pulse) = (lines, index, pulse);
        _lines.Changed += OnChanged;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _lines.Changed -= OnChanged;
        (_lines as IDisposable)?.Dispose();
    }

    private void OnChanged(ModemLine line)
    {
        if (line == _index.Line && (line == ModemLine.Ri || _lines.IsUp(line) != _index.Falling))
        {
            _pulse(Name(line));
        }
    }

    private static string Name(ModemLine line) => line switch
    {
        ModemLine.Cts => "cts",
        ModemLine.Dsr => "dsr",
        ModemLine.Dcd => "dcd",
        _ => "ri",
    };
}
