using System.Net;
using Handspun.Screens;

namespace Handspun.Http;

/// <summary>Keeps pages of other sites, open in a browser on this machine, from telling the station what to do or listening to its broker.</summary>
internal sealed class SameOriginGuard(RequestDelegate next)
{
    private const int HttpPort = 80;

    /// <summary>Lets a request through, or refuses it.</summary>
    public async Task InvokeAsync(HttpContext context)
    {
        if (!IsAskedByItsAddress(context))
        {
            await RefuseAsync(context, ShopDoor.Of(context) is null
                ? "The station answers to this machine's own address only: open it as http://127.0.0.1."
                : $"The station answers to its address only, not to a name: open it as http://{new IPEndPoint(context.Connection.LocalIpAddress!, context.Connection.LocalPort)}.");
        }
        else if (ChangesSomething(context.Request) && IsForeign(context.Request))
        {
            await RefuseAsync(context, "That came from another site's page: open the station's own page and do it there.");
        }
        else
        {
            await next(context);
        }
    }

    private static bool ChangesSomething(HttpRequest request) =>
        !(HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method)) || request.HttpContext.WebSockets.IsWebSocketRequest || request.Path == "/mqtt";

    private static bool IsForeign(HttpRequest request) =>
        request.Headers.Origin is [{ } origin] && !(Uri.TryCreate(origin, UriKind.Absolute, out var from) && from.Authority == request.Host.Value);

    // A name that merely resolves to this machine is not enough: that is how a foreign page would get round the rule.
    private static bool IsAskedByItsAddress(HttpContext context)
    {
        var host = context.Request.Host;
        var address = IPAddress.TryParse(host.Host.Trim('[', ']'), out var given) ? given : null;
        return ShopDoor.Of(context) is null
            ? host.Host.Equals("localhost", StringComparison.OrdinalIgnoreCase) || (address is not null && IPAddress.IsLoopback(address))
            : address is not null && address.Equals(context.Connection.LocalIpAddress) && (host.Port ?? HttpPort) == context.Connection.LocalPort;
    }

    private static Task RefuseAsync(HttpContext context, string sentence) =>
        TypedResults.Problem(sentence, statusCode: StatusCodes.Status403Forbidden, title: "Not from here").ExecuteAsync(context);
}
