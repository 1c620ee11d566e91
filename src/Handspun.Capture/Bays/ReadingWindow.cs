using Handspun.Gauges.Readings;

namespace Handspun.Capture.Bays;

/// <summary>The newest readings and index pulses of one gauge, as far back as was asked for.</summary>
internal sealed class ReadingWindow(TimeSpan length)
{
    private double[] _seconds = new double[1024];
    private double[] _millimetres = new double[1024];
    private readonly Queue<TimeSpan> _pulses = new();
    private int _first;
    private int _end;

    public TimeSpan Newest { get; private set; }

    /// <summary>Adds readings, in their order.</summary>
    public void Add(IEnumerable<Reading> readings)
    {
        foreach (var reading in readings)
        {
            Add(reading);
        }
    }

    /// <summary>Adds a reading.</summary>
    public void Add(Reading reading)
    {
        if (_end == _seconds.Length)
        {
            MakeRoom();
        }

        _seconds[_end] = reading.At.TotalSeconds;
        _millimetres[_end++] = reading.Millimetres;
        Newest = reading.At;
        var oldest = (reading.At - length).TotalSeconds;
        while (_seconds[_first] < oldest)
        {
            _first++;
        }
    }

    /// <summary>Adds an index pulse.</summary>
    public void AddPulse(TimeSpan at)
    {
        _pulses.Enqueue(at);
        while (_pulses.Peek() < at - length)
        {
            _pulses.Dequeue();
        }
    }

    /// <summary>The index pulses from a moment on.</summary>
    public IEnumerable<TimeSpan> PulsesSince(TimeSpan from) => _pulses.Where(at => at >= from);

    /// <summary>The readings from a moment on.</summary>
    public (ReadOnlyMemory<double> Seconds, ReadOnlyMemory<double> Millimetres) Since(TimeSpan from)
    {
        var place = Array.BinarySearch(_seconds, _first, _end - _first, from.TotalSeconds);
        place = place < 0 ? ~place : place;
        while (place > _first && _seconds[place - 1] == from.TotalSeconds)
        {
            place--;   // several readings can share one arrival
        }

        return (_seconds.AsMemory(place, _end - place), _millimetres.AsMemory(place, _end - place));
    }

    private void MakeRoom()
    {
        var count = _end - _first;
        if (count > _seconds.Length / 2)
        {
            Array.Resize(ref _seconds, _seconds.Length * 2);
            Array.Resize(ref _millimetres, _millimetres.Length * 2);
        }

        Array.Copy(_seconds, _first, _seconds, 0, count);
        Array.Copy(_millimetres, _first, _millimetres, 0, count);
        (_first, _end) = (0, count);
    }
}
