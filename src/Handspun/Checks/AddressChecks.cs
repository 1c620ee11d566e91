using System.Net;
using System.Net.Sockets;

namespace Handspun.Checks;

/// <summary>The addresses of the pages and of the broker: answered by the station that runs, or free for the one that will.</summary>
internal static class AddressChecks
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(2);

    /// <summary>Looks at one of them.</summary>
    /// <param name="subject">What is to answer there.</param>
    /// <param name="address">Where.</param>
    /// <param name="remedy">The option that gives another one.</param>
    /// <param name="stationRuns">Whether a station works in the data folder.</param>
    /// <param name="time">The time.</param>
    /// <param name="cancellationToken">Stops it.</param>
    public static async Task<CheckLine> OfAsync(string subject, IPEndPoint address, string remedy, bool stationRuns, TimeProvider time, CancellationToken cancellationToken)
    {
        var answered = await IsAnsweredAsync(address, time, cancellationToken);
        return (stationRuns, answered) switch
        {
            (true, true) => CheckLine.Good(subject, $"The station answers at {address}."),
            (true, false) => CheckLine.Failing(subject, $"A station runs, and nothing answers at {address}: it may have been started with another {remedy}; give the same here, or start it again."),
            (false, true) => CheckLine.Failing(subject, $"{address} is in use by another program: stop that one, or start the station with another {remedy}."),
            _ => CheckLine.Good(subject, $"{address} is free for the station."),
        };
    }

    private static async Task<bool> IsAnsweredAsync(IPEndPoint address, TimeProvider time, CancellationToken cancellationToken)
    {
        using var client = new TcpClient(address.AddressFamily);
        try
        {
            await client.ConnectAsync(address, cancellationToken).AsTask().WaitAsync(Patience, time, cancellationToken);
            return true;
        }
        catch (Exception e) when (e is SocketException or TimeoutException)
        {
            return false;
        }
    }
}
