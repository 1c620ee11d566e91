using System.Net;
using System.Net.Sockets;

namespace Handspun.Screens;

/// <summary>What came of a code that a screen showed.</summary>
internal enum PairingAnswer
{
    /// <summary>It was the code, and has been used up by this.</summary>
    Taken,

    /// <summary>It is wrong, used, or too old.</summary>
    Wrong,

    /// <summary>Too many wrong codes came from there: none is looked at for a while.</summary>
    TooMany,
}

/// <summary>The one code that is good now, and who tried how often without it.</summary>
internal sealed class PairingCodes(TimeProvider time)
{
    /// <summary>Wrong codes from one address before none is looked at; our own choice.</summary>
    public const int TriesAllowed = 5;

    /// <summary>For how long then.</summary>
    public static readonly TimeSpan Pause = TimeSpan.FromMinutes(5);

    // A shop has no thousand screens: somebody who has so many addresses is guessing.
    private const int MostAddresses = 1000;
    private const int HostBytesOfIPv6 = 8;   // one machine has all addresses of a /64 to choose from (RFC 4291, 2.5.4)

    private readonly Lock _lock = new();
    private readonly Dictionary<IPAddress, (int Wrong, DateTimeOffset Last)> _tries = [];
    private PairingCode? _current;

    /// <summary>The code that is good now; a new one where the last was used or is too old.</summary>
    public PairingCode Current
    {
        get
        {
            lock (_lock)
            {
                var now = time.GetUtcNow();
                return _current = _current is { } code && now < code.EndsAt ? code : PairingCode.New(now);
            }
        }
    }

    /// <summary>Takes a code that came from an address, once.</summary>
    public PairingAnswer TryUse(string typed, IPAddress from)
    {
        lock (_lock)
        {
            var (now, who) = (time.GetUtcNow(), Machine(from));
            Forget(now);
            var wrong = _tries.GetValueOrDefault(who).Wrong;
            if (wrong >= TriesAllowed || _tries.Count >= MostAddresses)
            {
                return PairingAnswer.TooMany;
            }

            if (_current is { } code && now < code.EndsAt && code.Is(typed))
            {
                _current = null;
                _tries.Remove(who);
                return PairingAnswer.Taken;
            }

            _tries[who] = (wrong + 1, now);
            return PairingAnswer.Wrong;
        }
    }

    private void Forget(DateTimeOffset now)
    {
        foreach (var who in _tries.Where(tried => now - tried.Value.Last >= Pause).Select(tried => tried.Key).ToList())
        {
            _tries.Remove(who);
        }
    }

    private static IPAddress Machine(IPAddress address)
    {
        if (address.IsIPv4MappedToIPv6)
        {
            return address.MapToIPv4();
        }

        if (address.AddressFamily != AddressFamily.InterNetworkV6)
        {
            return address;
        }

        var bytes = address.GetAddressBytes();
        bytes.AsSpan(HostBytesOfIPv6).Clear();
        return new IPAddress(bytes);
    }
}
