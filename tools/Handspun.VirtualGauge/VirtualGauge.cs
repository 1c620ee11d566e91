using System.Globalization;
using System.Threading.Channels;
using Handspun.VirtualGauge.Shaft;
using Handspun.VirtualGauge.Wires;

namespace Handspun.VirtualGauge;

/// <summary>Sends what the indicator shows, at a real gauge's pace, and does what it is told on its standard input.</summary>
/// <remarks>
/// Words on the input, one a line: <c>turn [TURNS]</c> puts the hand to the wheel, <c>push-pull [CYCLES]</c> to the shaft's
/// end, <c>rock [CYCLES]</c> to a gauge in a bore, <c>roll [CYCLES]</c> to a body under the gauge, <c>cam [TURNS OF THE CRANK]</c> to a crank with the indicator on a tappet;
/// <c>unplug</c> and <c>plug</c> pull the cable out and put it back, <c>noise</c> sends a line that is no reading, <c>inch</c>
/// and <c>mm</c> switch its unit, <c>battery</c> runs its battery down. The end of the input ends the gauge.
/// </remarks>
internal sealed class VirtualGauge(ShaftUnderIndicator shaft, HandWork work, Func<IWire> plug, GaugePace pace, TimeProvider time)
{
    private readonly Channel<string> _words = Channel.CreateBounded<string>(64);
    private IWire? _wire;
    private int _motions;
    private double _crankTurns;

    public async Task RunAsync(TextReader input, TextWriter output, CancellationToken stopping)
    {
        var zero = time.GetTimestamp();
        _wire = plug();
        await output.WriteLineAsync($"port {_wire.Port}");
        await output.FlushAsync(stopping);
        var reading = ReadWordsAsync(input, stopping);
        using var timer = new PeriodicTimer(TimeSpan.FromSeconds(1 / pace.Hertz), time);
        var nextTurn = pace.TurnEvery ?? TimeSpan.MaxValue;
        try
        {
            while (await timer.WaitForNextTickAsync(stopping) && !(reading.IsCompleted && _words.Reader.Count == 0))
            {
                var now = time.GetElapsedTime(zero);
                while (_words.Reader.TryRead(out var word))
                {
                    Do(word, now);
                }

                if (now >= nextTurn && !shaft.IsTurning(now))
                {
                    shaft.Turn(now, pace.Turns, pace.TurnsPerSecond);
                    nextTurn = now + pace.TurnEvery!.Value;
                }

                _wire?.Send(shaft.FrameAt(now));
            }
        }
        catch (OperationCanceledException)
        {
            // Told to stop.
        }
        finally
        {
            _wire?.Dispose();
        }
    }

    private void Do(string word, TimeSpan now)
    {
        switch (word.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            case ["turn"]:
                shaft.Turn(now, pace.Turns, pace.TurnsPerSecond);
                break;
            case ["turn", var turns] when double.TryParse(turns, NumberStyles.Float, CultureInfo.InvariantCulture, out var asked) && asked > 0:
                shaft.Turn(now, asked, pace.TurnsPerSecond);
                break;
            case ["push-pull", .. var cycles] when CyclesOf(cycles) is { } pushes:
                shaft.Move(now, HandMotion.PushPull(work, pushes, ++_motions, shaft.MillimetresAt(now)));
                break;
            case ["rock", .. var cycles] when CyclesOf(cycles) is { } rocks:
                shaft.Move(now, HandMotion.Rock(work, rocks, ++_motions));
                break;
            case ["roll", .. var cycles] when CyclesOf(cycles) is { } rolls:
                shaft.Move(now, HandMotion.Roll(work, rolls, ++_motions));
                break;
            case ["cam", .. var asked] when TurnsOf(asked) is { } crankTurns:
                shaft.Move(now, HandMotion.Cam(work, _crankTurns, crankTurns, pace.TurnsPerSecond, ++_motions));
                _crankTurns += crankTurns;
                break;
            case ["inch"] or ["mm"]:
                shaft.Inch = word == "inch";
                break;
            case ["battery"]:
                shaft.BatteryLow = true;
                break;
            case ["unplug"]:
                _wire?.Dispose();
                _wire = null;
                break;
            case ["plug"]:
                _wire ??= plug();
                break;
            case ["noise"]:
                _wire?.Send("?#~ err 07\r\n"u8);
                break;
        }
    }

    private static double? TurnsOf(string[] words)
    {
        const double usual = 6;
        const double most = 200;
        return words switch
        {
            [] => usual,
            [var word] when double.TryParse(word, NumberStyles.Float, CultureInfo.InvariantCulture, out var asked) && asked is > 0 and <= most => asked,
            _ => null,
        };
    }

    private static int? CyclesOf(string[] words)
    {
        const int usual = 4;
        const int most = 200;
        return words switch
        {
            [] => usual,
            [var word] when int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var asked) && asked is > 0 and <= most => asked,
            _ => null,
        };
    }

    // The console's reader blocks and cannot be cancelled, so it gets a thread of its own.
    private async Task ReadWordsAsync(TextReader input, CancellationToken stopping)
    {
        await Task.Yield();
        while (!stopping.IsCancellationRequested && await Task.Run(input.ReadLine, stopping) is { } line)
        {
            await _words.Writer.WriteAsync(line.Trim(), stopping);
        }
    }
}

/// <summary>How fast the gauge sends and the hand turns.</summary>
internal sealed record GaugePace
{
    /// <summary>Readings a second.</summary>
    public double Hertz { get; init; } = 50;

    /// <summary>Turns that the hand makes when it is told to turn.</summary>
    public double Turns { get; init; } = 3.6;

    /// <summary>How fast it turns.</summary>
    public double TurnsPerSecond { get; init; } = 0.6;

    /// <summary>How often it turns by itself; null where it waits to be told.</summary>
    public TimeSpan? TurnEvery { get; init; }
}
