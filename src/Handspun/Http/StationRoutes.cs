using Handspun.Http.Comparing;
using Handspun.Http.Limits;
using Handspun.Http.PlanEditor;
using Handspun.Http.Plans;
using Handspun.Http.Shop;

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
        routes.MapComparePage();
        routes.MapSettingsPage();
        routes.MapLimitListPage();
        routes.MapPlanPages();
        routes.MapScreenPages();
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
        calls.MapComparing();
        calls.MapSettings();
        calls.MapLimitLists();
        calls.MapPlanTexts();
        calls.MapArchives();
        calls.MapRecords();
        calls.MapGauges();
        calls.MapShopGauges();
        calls.MapScreens();
    }
}
