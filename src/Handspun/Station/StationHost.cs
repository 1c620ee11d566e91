using System.Net;
using System.Net.Sockets;
using Handspun.Archives;
using Handspun.Bays;
using Handspun.Broker;
using Handspun.Capture.Bays;
using Handspun.Entries;
using Handspun.Filing;
using Handspun.Gauges.Links;
using Handspun.Gauges.Listening;
using Handspun.Gauges.Readings;
using Handspun.Http;
using Handspun.Http.Plans;
using Handspun.Jobs.Plans;
using Handspun.Jobs.Store;
using Handspun.Photos;
using Handspun.PlanFiles;
using Handspun.Reports;
using Handspun.Screens;
using Handspun.ShopGauges;
using Handspun.ShopSettings;
using Handspun.Wire;
using Handspun.WorkedOut;
using MQTTnet.AspNetCore;
using MQTTnet.Server;

namespace Handspun.Station;

/// <summary>Puts a station together: gauges, bay, store, broker, pages.</summary>
internal static class StationHost
{
    private const int MessagesForASlowScreen = 2000;

    /// <summary>A station that has not started.</summary>
    public static WebApplication Build(StationOptions options)
    {
        var builder = WebApplication.CreateBuilder(new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory, Args = [] });
        builder.Services.AddSystemd().AddWindowsService(service => service.ServiceName = "Handspun");
        builder.AddStationLogging(options);
        builder.WebHost.UseStaticWebAssets();
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Listen(options.Http);
            kestrel.Listen(options.Mqtt, mqtt => mqtt.UseMqtt());
            if (options.Screens is { } screens)
            {
                kestrel.Listen(screens, ShopDoor.Open);
            }
        });
        builder.Services.AddSingleton(options).AddSingleton(TimeProvider.System);
        AddBroker(builder.Services);
        AddGauges(builder.Services, options);
        AddStore(builder.Services, options);
        AddBay(builder.Services);
        AddPages(builder.Services);
        AddScreens(builder.Services, options);

        var station = builder.Build();
        station.UseExceptionHandler();
        station.UseMiddleware<SameOriginGuard>();
        station.UseMiddleware<PairingGuard>();
        station.UseStatusCodePages(ProblemPages.ShowAsync);
        station.MapStaticAssets();
        station.MapMqtt("/mqtt");
        station.MapStation();
        return station;
    }

    // The order of the hosted services is the order in which they start; they stop in the reverse of it.
    private static void AddBroker(IServiceCollection services)
    {
        services.AddHostedMqttServer(server => server
            .WithoutDefaultEndpoint()
            .WithMaxPendingMessagesPerClient(MessagesForASlowScreen)
            .WithPendingMessagesOverflowStrategy(MqttPendingMessagesOverflowStrategy.DropOldestQueuedMessage));
        services.AddMqttConnectionHandler().AddConnections();
        services.AddSingleton<PulseInlet>().AddSingleton<StationBroker>().AddHostedService(provider => provider.GetRequiredService<StationBroker>());
        services.AddSingleton<GaugePublisher>().AddHostedService(provider => provider.GetRequiredService<GaugePublisher>());
        services.AddSingleton<ProgressPublisher>().AddHostedService(provider => provider.GetRequiredService<ProgressPublisher>());
    }

    private static void AddGauges(IServiceCollection services, StationOptions options)
    {
        services.AddSingleton<GaugeClock>().AddSingleton<GaugeFeed>().AddSingleton<ILinkOpener, LinkOpener>();
        services.AddSingleton(provider => new GaugeRoster(
            options.Gauges,
            options.Data.Journals,
            provider.GetRequiredService<ILinkOpener>(),
            provider.GetRequiredService<GaugeClock>(),
            provider.GetRequiredService<GaugeFeed>(),
            provider.GetRequiredService<TimeProvider>(),
            provider.GetRequiredService<ILogger<GaugeListener>>()));
        services.AddHostedService<GaugeService>();
    }

    private static void AddStore(IServiceCollection services, StationOptions options)
    {
        services.AddJobStore(options.Data.Store);
        services.AddSingleton(new PlanShelf(options.Data.Plans, PlanShelf.ShippedFolder));
        services.AddSingleton<SettingsDesk>().AddSingleton<PlanDesk>().AddSingleton<PhotoFolder>().AddSingleton<PhotoDesk>().AddSingleton<BookDesk>().AddSingleton<PageDesk>();
        services.AddHostedService<StoreService>();
        services.AddSingleton<ResultPublisher>().AddHostedService(provider => provider.GetRequiredService<ResultPublisher>());
        services.AddSingleton<ReportDesk>();
        services.AddSingleton(options.Data).AddSingleton<ArchiveIntake>().AddSingleton<ArchiveDesk>();
        services.AddSingleton<RecordFolder>().AddSingleton<PicturesTogether>().AddSingleton<InterruptedCaptures>();
        services.AddSingleton<RecordFiler>().AddHostedService(provider => provider.GetRequiredService<RecordFiler>());
    }

    private static void AddBay(IServiceCollection services)
    {
        services.AddSingleton(new BaySettings());
        services.AddSingleton<ICaptureReceiver>(provider => provider.GetRequiredService<ProgressPublisher>());
        services.AddSingleton<ICaptureReceiver>(provider => provider.GetRequiredService<RecordFiler>());
        services.AddSingleton<Bay>().AddSingleton<BaySteps>().AddSingleton<BayDesk>().AddSingleton<GaugeDesk>().AddSingleton<EntryDesk>().AddSingleton<WorkedOutDesk>();
        services.AddHostedService<BayService>().AddHostedService<BayStepper>();
    }

    private static void AddPages(IServiceCollection services)
    {
        services.AddRazorComponents();
        services.AddOpenApi("v1");
        services.AddProblemDetails().AddExceptionHandler<SentenceForExceptions>();
        services.Configure<ExceptionHandlerOptions>(handler => handler.SuppressDiagnosticsCallback = handled => handled.HttpContext.Response.StatusCode < StatusCodes.Status500InternalServerError);   // what the station failed in is in its log
        services.Configure<RouteHandlerOptions>(routes => routes.ThrowOnBadRequest = true);   // so that a bad body gets a sentence too
        services.ConfigureHttpJsonOptions(json => WireJson.Configure(json.SerializerOptions));
    }

    private static void AddScreens(IServiceCollection services, StationOptions options)
    {
        services.AddSingleton(PairedScreens.Read(options.Data.Screens, TimeProvider.System));
        services.AddSingleton<PairingCodes>().AddSingleton<PairingDesk>();
    }

    /// <summary>Starts a station; what a person can mend is told in a sentence.</summary>
    /// <exception cref="StationTroubleException">A port is taken, or the store is of a later version.</exception>
    public static async Task StartAsync(WebApplication station, StationOptions options, CancellationToken cancellationToken)
    {
        try
        {
            await station.StartAsync(cancellationToken);
        }
        catch (StoreTooNewException e)
        {
            throw new StationTroubleException(e.Message);
        }
        catch (IOException e) when (e.InnerException is Microsoft.AspNetCore.Connections.AddressInUseException)
        {
            throw e.Message.Contains(options.Http.ToString(), StringComparison.Ordinal) ? InUse(options.Http, "--http http://127.0.0.1:" + (options.Http.Port + 1))
                : options.Screens is { } screens && e.Message.Contains(screens.ToString(), StringComparison.Ordinal) ? InUse(screens, $"--screens http://{new IPEndPoint(screens.Address, screens.Port + 1)}")
                : InUse(options.Mqtt, "--mqtt-port " + (options.Mqtt.Port + 1));
        }
        catch (SocketException e) when (e.SocketErrorCode == SocketError.AddressNotAvailable)
        {
            var own = PairingDesk.OfThisMachine();
            throw new StationTroubleException($"This machine does not have the address {options.Screens?.Address}: "
                + (own.Count == 0 ? "join the shop's network first." : $"start the station with {PairingDesk.Example()}; its addresses are {string.Join(", ", own)}."));
        }
    }

    private static StationTroubleException InUse(IPEndPoint address, string remedy) =>
        new($"Port {address.Port} is in use, perhaps by another station: stop that one, or start this one with {remedy}.");
}
