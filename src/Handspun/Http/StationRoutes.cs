using Handspun.Http.Plans;
namespace Handspun.Http;

/// <summary>All that the station answers over HTTP.</summary>
internal static class StationRoutes
{
    /// <summary>Maps pages and calls.</summary>
    public static void MapStation(this IEndpointRouteBuilder routes)
    {
        routes.MapPages();
        routes.MapEntryPages();
        routes.MapBookPages();
        routes.MapLabelPages();
        routes.MapLimitPages();
        routes.MapReckoningPage();
        routes.MapReportPage();
        routes.MapHistoryPage();
        routes.MapIntakePage();
        routes.MapSchemas();
        routes.MapDocuments();
        var calls = routes.MapGroup("/api/v1");
        calls.MapBay();
        calls.MapJobs();
        calls.MapPoints();
        calls.MapSetups();
        calls.MapCrank();
        calls.MapEntries();
        calls.MapPlans();
        calls.MapBook();
        calls.MapLabels();
        calls.MapReckonings();
        calls.MapReports();
        calls.MapHistory();
        calls.MapArchives();
        calls.MapRecords();
        calls.MapGauges();
        calls.MapShopGauges();
    }
}
