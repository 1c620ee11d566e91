using System.Net;
using Microsoft.AspNetCore.Server.Kestrel.Core;

namespace Handspun.Screens;

/// <summary>Marks every connection that came in by the shop's network, whoever made it and whatever its headers say.</summary>
/// <remarks>
/// What decides is the door a connection came in by, not the address it claims: the station's own door is bound to loopback, so
/// only this machine reaches it, and a forwarded address in a header counts nowhere.
/// </remarks>
internal sealed class ShopDoor
{
    private ShopDoor(EndPoint? from) => From = (from as IPEndPoint)?.Address ?? IPAddress.None;

    /// <summary>The other end's address, as the connection has it.</summary>
    public IPAddress From { get; }

    /// <summary>The door a request came in by; null for this machine's own.</summary>
    public static ShopDoor? Of(HttpContext context) => context.Features.Get<ShopDoor>();

    /// <summary>Makes an endpoint a door to the shop's network.</summary>
    public static void Open(ListenOptions endpoint) => endpoint.Use(next => connection =>
    {
        connection.Features.Set(new ShopDoor(connection.RemoteEndPoint));
        return next(connection);
    });
}
