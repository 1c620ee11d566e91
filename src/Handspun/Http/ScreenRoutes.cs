using Handspun.Pages.Screens;
using Handspun.Screens;
using Handspun.Wire;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Handspun.Http;

/// <summary>Pairing screens of the shop's network, and unpairing them.</summary>
internal static class ScreenRoutes
{
    /// <summary>Maps the pages: the code at the station, and where a screen shows it.</summary>
    public static void MapScreenPages(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/screens", (PairingDesk desk, TimeProvider time) => new RazorComponentResult<ScreensPage>(new { Model = ScreensView.Of(desk, time) }))
            .WithMetadata(new AtTheStationOnly()).ExcludeFromDescription();
        routes.MapGet("/pair/{code?}", (HttpContext context, PairingDesk desk, string? code = null) => PairAsync(context, desk, code ?? context.Request.Query["code"].ToString()))
            .WithMetadata(new OpenToUnpaired()).ExcludeFromDescription();
    }

    /// <summary>Maps the calls.</summary>
    public static void MapScreens(this IEndpointRouteBuilder calls)
    {
        var screens = calls.MapGroup("/screens").WithMetadata(new AtTheStationOnly());
        screens.MapGet("", Describe);
        screens.MapDelete("/{screen:int}", (int screen, PairingDesk desk) => desk.Unpair(screen)
            ? Describe(desk)
            : throw new RequestSentenceException($"No screen {screen} is paired: the page Screens lists those that are."));
    }

    private static ScreensMessage Describe(PairingDesk desk)
    {
        var offer = desk.Offer;
        return new(
            offer?.Address,
            offer?.Code.Text,
            offer?.Code.EndsAt,
            [.. desk.Screens.All.Select(screen => new ScreenMessage(screen.Number, screen.From, screen.PairedAt, desk.Screens.SeenAt(screen)))]);
    }

    private static async Task PairAsync(HttpContext context, PairingDesk desk, string code)
    {
        if (ShopDoor.Of(context) is not { } door || PairingGuard.ScreenOf(context, desk.Screens) is not null)
        {
            context.Response.Redirect("/bay");
            return;
        }

        context.Response.Headers.CacheControl = "no-store";
        var (answer, screen, token) = desk.Pair(code, door.From);
        switch (answer)
        {
            case PairingAnswer.Taken:
                PairingGuard.Give(context, token!);
                await new RazorComponentResult<PairedPage>(new { screen!.Number }).ExecuteAsync(context);
                break;
            case PairingAnswer.Wrong:
                await PairingGuard.ShowAsync(context, StatusCodes.Status401Unauthorized, $"That code is wrong, was used, or is older than {PairingCode.Life.TotalMinutes:0} minutes: scan the one that the station shows now.");
                break;
            default:
                context.Response.Headers.RetryAfter = PairingCodes.Pause.TotalSeconds.ToString("0", System.Globalization.CultureInfo.InvariantCulture);
                await PairingGuard.ShowAsync(context, StatusCodes.Status429TooManyRequests, $"Too many wrong codes came from here: wait {PairingCodes.Pause.TotalMinutes:0} minutes, then scan the one that the station shows then.");
                break;
        }
    }
}
