using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;

namespace Handspun.Station;

/// <summary>Where a station that has started can be reached.</summary>
/// <param name="Pages">The address of the pages.</param>
/// <param name="BrokerPort">The broker's TCP port.</param>
internal sealed record StationAddresses(Uri Pages, int BrokerPort)
{
    /// <summary>The addresses of a station that has started; the system may have chosen the ports.</summary>
    public static StationAddresses Of(WebApplication station)
    {
        // Kestrel lists its endpoints in the order in which they were asked for: pages, then broker.
        var addresses = station.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.Select(address => new Uri(address)).ToList();
        return new(addresses[0], addresses[1].Port);
    }
}
