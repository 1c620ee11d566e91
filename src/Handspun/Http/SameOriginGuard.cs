using System.Net;

namespace Handspun.Http;

/// <summary>Keeps pages of other sites, open in a browser on this machine, from telling the station what to do or listening to its broker.</summary>
internal sealed class SameOriginGuard(RequestDelegate next)
{
    /// <summary>Lets a request through, or refuses it.</summary>
    public async Task InvokeAsync(HttpContext context)
    {
        if (!IsThisMachine(context.Request.Host.Host))
        {
            await RefuseAsync(context, "The station answers to this machine's own address only: open it as http://127.0.0.1.");
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
    private static bool IsThisMachine(string host) =>
        host.Equals("localhost", StringComparison.OrdinalIgnoreCase) || (IPAddress.TryParse(host.Trim('[', ']'), out var address) && IPAddress.IsLoopback(address));

    private static Task RefuseAsync(HttpContext context, string sentence) =>
        TypedResults.Problem(sentence, statusCode: StatusCodes.Status403Forbidden, title: "Not from here").ExecuteAsync(context);
}
