using Handspun.Jobs.Standing;
using Handspun.Jobs.Store;
using Handspun.Labels;
using Handspun.Pages.Plans;
using Handspun.Station;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Handspun.Http.Plans;

/// <summary>Labels for parts, whose codes open the part's page: where phones reach the station, else at the address at which it was asked.</summary>
internal static class LabelPages
{
    /// <summary>Maps the page; with <c>part</c>, for that one.</summary>
    public static void MapLabelPages(this IEndpointRouteBuilder routes) =>
        routes.MapGet("/jobs/{job}/labels", async (string job, string? part, JobStore store, IServer server, HttpRequest request, CancellationToken cancellation) =>
        {
            var found = await store.GetAsync(job, cancellation);
            var parts = JobParts.Of(found).Where(p => part is null || p.Code == part);
            return new RazorComponentResult<LabelsPage>(new
            {
                Model = new LabelsView(found.Number, found.Bike.Title, [.. parts.Select(p => new LabelView(p.Title, p.Place, p.FacedInWords, AddressOf(server, request, found.Number, p.Code)))]),
            });
        }).ExcludeFromDescription();

    /// <summary>Maps the code of one part as a drawing.</summary>
    public static void MapLabels(this IEndpointRouteBuilder calls) =>
        calls.MapGet("/jobs/{job}/parts/{part}/code.svg", async (string job, string part, JobStore store, IServer server, HttpRequest request, CancellationToken cancellation) =>
        {
            var found = await store.GetAsync(job, cancellation);
            return JobParts.Of(found).Any(p => p.Code == part)
                ? TypedResults.Text(QrSign.Svg(AddressOf(server, request, found.Number, part)), "image/svg+xml")
                : throw new JobNotFoundException($"Job {job} has no part '{part}': its page lists its parts.");
        });

    private static string AddressOf(IServer server, HttpRequest request, string job, string part)
    {
        var station = StationAddresses.Of(server).Screens?.Authority ?? request.Host.ToString();
        return $"{request.Scheme}://{station}/jobs/{job}/parts/{part}";
    }
}
