using System.Net;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Handspun.SharedFiles;
using Handspun.Station;

namespace Handspun.Screens;

/// <summary>The screens that may see the station over the shop's network, kept in <c>screens.json</c>.</summary>
internal sealed class PairedScreens
{
    private const int TokenBytes = 16;

    private readonly Lock _lock = new();
    private readonly string _path;
    private readonly TimeProvider _time;
    private readonly List<(PairedScreen Screen, HttpContext Request)> _open = [];
    private readonly Dictionary<int, DateTimeOffset> _seen = [];
    private List<PairedScreen> _screens;

    private PairedScreens(string path, TimeProvider time, List<PairedScreen> screens) => (_path, _time, _screens) = (path, time, screens);

    /// <summary>All of them, the first one first.</summary>
    public IReadOnlyList<PairedScreen> All
    {
        get
        {
            lock (_lock)
            {
                return [.. _screens];
            }
        }
    }

    /// <summary>Reads the file; no screens where there is none.</summary>
    /// <exception cref="StationTroubleException">The file does not hold.</exception>
    public static PairedScreens Read(string path, TimeProvider time)
    {
        try
        {
            return new(path, time, File.Exists(path) ? JsonSerializer.Deserialize<List<PairedScreen>>(File.ReadAllText(path)) ?? [] : []);
        }
        catch (JsonException)
        {
            throw new StationTroubleException($"{path} does not hold: put back a copy, or delete it and pair the screens again.");
        }
    }

    /// <summary>Pairs a screen.</summary>
    /// <returns>It, and what it is to keep and show from now on: 128 random bits.</returns>
    public (PairedScreen Screen, string Token) Add(IPAddress from)
    {
        var token = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(TokenBytes));
        lock (_lock)
        {
            var screen = new PairedScreen(_screens.Select(known => known.Number).DefaultIfEmpty().Max() + 1, HashOf(token), from.ToString(), _time.GetUtcNow());
            Keep([.. _screens, screen]);
            return (screen, token);
        }
    }

    /// <summary>The screen that keeps this; null where none does.</summary>
    public PairedScreen? Find(string? token)
    {
        if (token is null)
        {
            return null;
        }

        var hash = HashOf(token);
        lock (_lock)
        {
            return _screens.Find(screen => screen.Hash == hash);
        }
    }

    /// <summary>When a screen last asked for something since the station was started; null where it has not.</summary>
    public DateTimeOffset? SeenAt(PairedScreen screen)
    {
        lock (_lock)
        {
            return _open.Any(open => open.Screen == screen) ? _time.GetUtcNow() : _seen.TryGetValue(screen.Number, out var at) ? at : null;
        }
    }

    /// <summary>Serves a request of a screen; it is cut off where the screen is unpaired meanwhile.</summary>
    public async Task ServeAsync(PairedScreen screen, HttpContext request, RequestDelegate serve)
    {
        lock (_lock)
        {
            _open.Add((screen, request));
        }

        try
        {
            await serve(request);
        }
        finally
        {
            lock (_lock)
            {
                _open.Remove((screen, request));
                _seen[screen.Number] = _time.GetUtcNow();
            }
        }
    }

    /// <summary>Unpairs a screen, and ends what it has open.</summary>
    /// <returns>False where there is no such screen.</returns>
    public bool Remove(int number)
    {
        lock (_lock)
        {
            if (_screens.Find(known => known.Number == number) is not { } screen)
            {
                return false;
            }

            Keep([.. _screens.Where(known => known != screen)]);
            foreach (var (_, request) in _open.Where(open => open.Screen == screen))
            {
                request.Abort();
            }

            return true;
        }
    }

    private void Keep(List<PairedScreen> screens)
    {
        WholeFile.Write(_path, JsonSerializer.Serialize(screens));
        _screens = screens;
    }

    private static string HashOf(string token) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(token)));
}
