using System.Diagnostics;
using System.Globalization;
using System.Reflection;
using System.Text;
using Handspun.VirtualGauge.Wires;

namespace Handspun.Delay;

/// <summary>The built service in a folder of its own, with gauges on pseudo-terminals whose other ends are here.</summary>
internal sealed class StationUnderTest : IAsyncDisposable
{
    /// <summary>Each reading is a number of thousandths that comes again only after so many; by it a reading is known again.</summary>
    public const int Numbers = 100_000;

    private const int FirstNumbers = 5;   // the first frame after an opening is passed over, and some come before the subscribers

    private readonly string _folder = Directory.CreateTempSubdirectory("handspun-delay-").FullName;
    private readonly List<PseudoTerminal> _wires = [];
    private readonly long[,] _sentAt;
    private readonly Process _program;

    private StationUnderTest(int gauges)
    {
        _sentAt = new long[gauges, Numbers];
        var program = typeof(StationUnderTest).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(metadata => metadata.Key == "Program").Value!;
        List<string> arguments = ["serve", "--data", Path.Combine(_folder, "data"), "--http", "http://127.0.0.1:0", "--mqtt-port", "0"];
        for (var gauge = 0; gauge < gauges; gauge++)
        {
            _wires.Add(new PseudoTerminal(Path.Combine(_folder, Name(gauge))));
            arguments.AddRange(["--gauge", $"{Name(gauge)}=text-line@{_wires[gauge].Port}"]);
        }

        _program = new Process { StartInfo = new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true } };
    }

    /// <summary>The broker's port.</summary>
    public int BrokerPort { get; private set; }

    /// <summary>Readings that were sent and count.</summary>
    public long Sent { get; private set; }

    /// <summary>The name of a gauge, counted from 0.</summary>
    public static string Name(int gauge) => string.Create(CultureInfo.InvariantCulture, $"gauge-{gauge}");

    /// <summary>Starts it and waits until its broker serves.</summary>
    public static async Task<StationUnderTest> StartAsync(int gauges, CancellationToken cancellationToken)
    {
        var station = new StationUnderTest(gauges);
        station._program.Start();
        while (await station._program.StandardOutput.ReadLineAsync(cancellationToken) is { } line)
        {
            if (line.StartsWith("Broker:", StringComparison.Ordinal))
            {
                station.BrokerPort = new Uri(line["Broker:".Length..].Trim()).Port;
                return station;
            }
        }

        throw new InvalidOperationException("The service ended before its broker served: run it by hand to see why.");
    }

    /// <summary>When a number was sent by a gauge, in ticks of <see cref="TimeProvider.GetTimestamp"/>; 0 where it does not count.</summary>
    public long SentAt(int gauge, int number) => Volatile.Read(ref _sentAt[gauge, number]);

    /// <summary>Lets every gauge send at a steady pace, each a little after the other.</summary>
    public Task SendAsync(double rate, TimeSpan during, CancellationToken cancellationToken) =>
        Task.WhenAll(_wires.Select(async (wire, gauge) => await SendAsync(wire, gauge, rate, during, cancellationToken)));

    private async Task SendAsync(PseudoTerminal wire, int gauge, double rate, TimeSpan during, CancellationToken cancellationToken)
    {
        var pace = TimeSpan.FromSeconds(1 / rate);
        await Task.Delay(pace * gauge / _wires.Count, TimeProvider.System, cancellationToken);
        using var timer = new PeriodicTimer(pace, TimeProvider.System);
        var many = (int)(during / pace);
        for (var number = 0; number < many + FirstNumbers && await timer.WaitForNextTickAsync(cancellationToken); number++)
        {
            var line = Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture, $"+{number % Numbers / 1000.0:0.000}\n"));
            if (number >= FirstNumbers)
            {
                Volatile.Write(ref _sentAt[gauge, number % Numbers], TimeProvider.System.GetTimestamp());
                lock (_wires)
                {
                    Sent++;
                }
            }

            wire.Send(line);
        }
    }

    public async ValueTask DisposeAsync()
    {
        if (!_program.HasExited)
        {
            _program.Kill();
            await _program.WaitForExitAsync(CancellationToken.None);
        }

        _program.Dispose();
        _wires.ForEach(wire => wire.Dispose());
        Directory.Delete(_folder, recursive: true);
    }
}
