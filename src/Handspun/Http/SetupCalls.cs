using Handspun.Bays;
using Handspun.Jobs.Points;
using Handspun.Jobs.Store;
using Handspun.Setups;
using Handspun.Station;
using Handspun.Wire;
using Handspun.WorkedOut;

namespace Handspun.Http;

/// <summary>Calls about what is said of a point before it is measured, and what the records of a bore say together.</summary>
internal static class SetupCalls
{
    /// <summary>Maps them.</summary>
    public static void MapSetups(this IEndpointRouteBuilder calls)
    {
        var setup = calls.MapGroup("/jobs/{job}/points/{point}/setup");
        setup.MapGet("", async (string job, string point, JobStore store, StationOptions options, CancellationToken cancellation) =>
            SetupMessage.Of(await PointAsync(store, job, point, cancellation), options.Unit));
        setup.MapPut("", SetAsync);
        setup.MapPatch("", ChangeAsync);
        calls.MapGet("/jobs/{job}/points/{point}/bore", async (string job, string point, JobStore store, CancellationToken cancellation) =>
        {
            var found = await PointAsync(store, job, point, cancellation);
            return found.Kind == PointKind.Bore ? BoreMessage.Of(found) : throw new RequestSentenceException($"{found.Title} is no bore: its records are with the job.");
        });
    }

    private static async Task<SetupMessage> SetAsync(
        string job, string point, Dictionary<string, string?> typed, JobStore store, BayDesk desk, WorkedOutDesk workedOut, StationOptions options, CancellationToken cancellation)
    {
        var found = await PointAsync(store, job, point, cancellation);
        return await KeepAsync(job, found, typed, store, desk, workedOut, options, cancellation);
    }

    // What is not sent stays as it is.
    private static async Task<SetupMessage> ChangeAsync(
        string job, string point, Dictionary<string, string?> typed, JobStore store, BayDesk desk, WorkedOutDesk workedOut, StationOptions options, CancellationToken cancellation)
    {
        var found = await PointAsync(store, job, point, cancellation);
        var before = SetupSheets.Find(found.Kind)?.Fields(found.Setup, options.Unit).Where(field => !typed.ContainsKey(field.Name)) ?? [];
        return await KeepAsync(job, found, typed.Concat(before.Select(field => new KeyValuePair<string, string?>(field.Name, field.Value))).ToDictionary(), store, desk, workedOut, options, cancellation);
    }

    private static async Task<SetupMessage> KeepAsync(
        string job, JobPoint found, Dictionary<string, string?> typed, JobStore store, BayDesk desk, WorkedOutDesk workedOut, StationOptions options, CancellationToken cancellation)
    {
        var point = found.Code;
        var sheet = SetupSheets.Find(found.Kind) ?? throw new RequestSentenceException($"Nothing need be said of {found.Title} before it is measured.");
        var changed = await store.SetUpAsync(job, point, sheet.Read(new TypedSheet(typed, sheet)), cancellation);
        await desk.RenewAsync(job, point, cancellation);
        await workedOut.RenewAsync(job, point, cancellation);
        return SetupMessage.Of(changed.Points.Find(p => p.Code == point)!, options.Unit);
    }

    private static async Task<JobPoint> PointAsync(JobStore store, string job, string point, CancellationToken cancellation) =>
        JobStore.PointIn(await store.GetAsync(job, cancellation), point);
}
