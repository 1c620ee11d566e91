using Handspun.Gauges.Readings;

namespace Handspun.Capture.Bays;

/// <summary>The newest readings of every gauge that was heard.</summary>
internal sealed class GaugeWindows(TimeSpan length)
{
    private readonly Dictionary<GaugeName, ReadingWindow> _windows = [];

    /// <summary>The window of a gauge, made when it is first asked for.</summary>
    public ReadingWindow Of(GaugeName gauge)
    {
        if (!_windows.TryGetValue(gauge, out var window))
        {
            _windows[gauge] = window = new ReadingWindow(length);
        }

        return window;
    }
}
