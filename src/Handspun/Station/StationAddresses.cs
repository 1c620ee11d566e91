using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;

namespace Handspun.Station;

/// <summary>Where a station that has started can be reached.</summary>
/// <param name="Pages">The address of the pages.</param>
/// <param name="BrokerPort">The broker's TCP port.</param>
/// <param name="Screens">Where screens of the shop's network reach the pages; null where they do not.</param>
internal sealed record StationAddresses(Uri Pages, int BrokerPort, Uri? Screens)
{
    /// <summary>The addresses of a station that has started; the system may have chosen the ports.</summary>
    public static StationAddresses Of(WebApplication station) => Of(station.Services.GetRequiredService<IServer>());

    /// <summary>The addresses of a server that has started.</summary>
    public static StationAddresses Of(IServer server)
    {
        // Kestrel lists its endpoints in the order in which they were asked for: pages, broker, the shop's network.
        var addresses = server.Features.Get<IServerAddressesFeature>()!.Addresses.Select(address => new Uri(address)).ToList();
        return new(addresses[0], addresses[1].Port, addresses.ElementAtOrDefault(2));
    }
}
