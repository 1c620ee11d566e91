using Handspun.Http;
using Handspun.Pages.Screens;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.StaticAssets;

namespace Handspun.Screens;

/// <summary>Keeps screens out that come by the shop's network and are not paired, and paired ones from what is done at the station itself.</summary>
internal sealed class PairingGuard(RequestDelegate next, PairedScreens screens)
{
    private const string Cookie = "handspun-screen";
    private const string Sentence = "This screen is not paired with the station: open Screens on the station itself (its address ends in /screens), and scan the code that it shows.";
    private static readonly TimeSpan Kept = TimeSpan.FromDays(400);   // browsers keep none for longer (RFC 6265bis, 5.5)

    /// <summary>Lets a request through, or refuses it.</summary>
    public Task InvokeAsync(HttpContext context)
    {
        if (ShopDoor.Of(context) is null)
        {
            return next(context);
        }

        var endpoint = context.GetEndpoint()?.Metadata;
        if (endpoint?.GetMetadata<StaticAssetDescriptor>() is not null || endpoint?.GetMetadata<OpenToUnpaired>() is not null)
        {
            return next(context);   // drawings, letters and scripts hold nothing of the shop's
        }

        if (ScreenOf(context, screens) is not { } screen)
        {
            return RefuseAsync(context);
        }

        return endpoint?.GetMetadata<AtTheStationOnly>() is not null
            ? ProblemPages.AnswerAsync(context, StatusCodes.Status403Forbidden, "Not from here", "Screens are paired and unpaired at the station itself: open Screens there.")
            : screens.ServeAsync(screen, context, next);
    }

    /// <summary>The paired screen that a request comes from; null where it comes from none.</summary>
    public static PairedScreen? ScreenOf(HttpContext context, PairedScreens screens) => screens.Find(context.Request.Cookies[Cookie]);

    /// <summary>Gives a screen what it is to keep. No script of the page reads it, and no other site's page has it sent.</summary>
    public static void Give(HttpContext context, string token) => context.Response.Cookies.Append(Cookie, token, new CookieOptions
    {
        HttpOnly = true,
        SameSite = SameSiteMode.Strict,
        MaxAge = Kept,
        Path = "/",
        IsEssential = true,
    });

    private static Task RefuseAsync(HttpContext context)
    {
        context.Response.Headers.WWWAuthenticate = "Pairing";   // RFC 9110, 15.5.2: a 401 names how to get in
        return ProblemPages.WantsPage(context)
            ? ShowAsync(context, StatusCodes.Status401Unauthorized, Sentence)
            : ProblemPages.AnswerAsync(context, StatusCodes.Status401Unauthorized, "Not paired", Sentence);
    }

    /// <summary>Shows the page on which a code can be typed.</summary>
    public static Task ShowAsync(HttpContext context, int status, string sentence) =>
        new RazorComponentResult<UnpairedPage>(new { Model = new UnpairedView(sentence) }) { StatusCode = status }.ExecuteAsync(context);
}

/// <summary>On an endpoint that a screen reaches before it is paired.</summary>
internal sealed class OpenToUnpaired;

/// <summary>On an endpoint that answers on the station itself only.</summary>
internal sealed class AtTheStationOnly;
