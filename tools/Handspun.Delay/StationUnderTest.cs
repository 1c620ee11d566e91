using System.Diagnostics;
using System.Globalization;
using System.Net.Http.Json;
using System.Reflection;
using System.Text;
using System.Text.Json;
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
    private readonly double[,] _sentOnTheWall;
    private readonly Process _program;

    private StationUnderTest(int gauges)
    {
        _sentAt = new long[gauges, Numbers];
        _sentOnTheWall = new double[gauges, Numbers];
        var program = typeof(StationUnderTest).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(metadata => metadata.Key == "Program").Value!;
        List<string> arguments = ["serve", "--data", Path.Combine(_folder, "data"), "--http", "http://127.0.0.1:0", "--mqtt-port", "0", "--unit", "mm"];
        for (var gauge = 0; gauge < gauges; gauge++)
        {
            _wires.Add(new PseudoTerminal(Path.Combine(_folder, Name(gauge))));
            arguments.AddRange(["--gauge", $"{Name(gauge)}=text-line@{_wires[gauge].Port}"]);
        }

        _program = new Process { StartInfo = new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true } };
    }

    /// <summary>Where the pages are.</summary>
    public Uri Pages { get; private set; } = null!;

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
            if (line.StartsWith("Pages:", StringComparison.Ordinal))
            {
                station.Pages = new Uri(line["Pages:".Length..].Trim());
            }

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

    /// <summary>When a number was sent by a gauge, in milliseconds of the machine's wall clock since 1970; 0 where it does not count.</summary>
    public double SentOnTheWall(int gauge, int number) => Volatile.Read(ref _sentOnTheWall[gauge, number]);

    /// <summary>Opens an invented job and gives each of so many gauges a point of it.</summary>
    public async Task MeasureAsync(IReadOnlyList<string> points, double wanted, CancellationToken cancellationToken)
    {
        using var http = new HttpClient { BaseAddress = Pages };
        using var opened = await http.PostAsJsonAsync("api/v1/jobs", new { make = "Aldermoor", model = "Corvid 1200", year = 2004, odometer = 18250, title = "Delay" }, cancellationToken);
        var job = (await opened.EnsureSuccessStatusCode().Content.ReadFromJsonAsync<JsonElement>(cancellationToken)).GetProperty("job").GetString();
        for (var gauge = 0; gauge < points.Count; gauge++)
        {
            using var added = await http.PostAsJsonAsync($"api/v1/jobs/{job}/points", new { point = points[gauge] }, cancellationToken);
            using var given = await http.PostAsJsonAsync("api/v1/bay/point", new { job, point = points[gauge], gauge = Name(gauge), cautions_read = true, wanted }, cancellationToken);
            if (!given.IsSuccessStatusCode)
            {
                throw new InvalidOperationException(await given.Content.ReadAsStringAsync(cancellationToken));
            }
        }
    }

    /// <summary>Ends the capture of a gauge.</summary>
    public async Task FinishAsync(int gauge, CancellationToken cancellationToken)
    {
        using var http = new HttpClient { BaseAddress = Pages };
        using var finished = await http.PostAsync(new Uri($"api/v1/bay/finish?gauge={Name(gauge)}", UriKind.Relative), null, cancellationToken);
        finished.EnsureSuccessStatusCode();
    }

    /// <summary>Lets the first gauge show what it is told, at a steady pace, several readings at a time where more are wanted than a timer gives.</summary>
    /// <param name="millimetres">What it shows after so many readings.</param>
    /// <param name="many">How many readings.</param>
    /// <param name="pace">The time from one writing to the next.</param>
    /// <param name="atOnce">Readings in one writing.</param>
    /// <param name="cancellationToken">Ends it.</param>
    public async Task ShowAsync(Func<int, double> millimetres, int many, TimeSpan pace, int atOnce, CancellationToken cancellationToken)
    {
        using var timer = new PeriodicTimer(pace, TimeProvider.System);
        for (var from = 0; from < many && await timer.WaitForNextTickAsync(cancellationToken); from += atOnce)
        {
            _wires[0].Send(Encoding.ASCII.GetBytes(string.Concat(Enumerable.Range(from, atOnce).Select(i => string.Create(CultureInfo.InvariantCulture, $"{millimetres(i):+0.000;-0.000}\n")))));
        }
    }

    /// <summary>Lets every gauge send at a steady pace, each a little after the other.</summary>
    /// <param name="rate">Readings a second of each.</param>
    /// <param name="during">How long they send what counts.</param>
    /// <param name="before">How long they send before that, so that all that listens has begun.</param>
    /// <param name="cancellationToken">Ends it.</param>
    public Task SendAsync(double rate, TimeSpan during, TimeSpan before, CancellationToken cancellationToken) =>
        Task.WhenAll(_wires.Select(async (wire, gauge) => await SendAsync(wire, gauge, rate, during, FirstNumbers + (int)(before.TotalSeconds * rate), cancellationToken)));

    private async Task SendAsync(PseudoTerminal wire, int gauge, double rate, TimeSpan during, int uncounted, CancellationToken cancellationToken)
    {
        var pace = TimeSpan.FromSeconds(1 / rate);
        await Task.Delay(pace * gauge / _wires.Count, TimeProvider.System, cancellationToken);
        using var timer = new PeriodicTimer(pace, TimeProvider.System);
        var many = (int)(during / pace);
        for (var number = 0; number < many + uncounted && await timer.WaitForNextTickAsync(cancellationToken); number++)
        {
            var line = Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture, $"+{number % Numbers / 1000.0:0.000}\n"));
            if (number >= uncounted)
            {
                Volatile.Write(ref _sentOnTheWall[gauge, number % Numbers], (TimeProvider.System.GetUtcNow() - DateTimeOffset.UnixEpoch).TotalMilliseconds);
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
