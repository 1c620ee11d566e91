using Handspun.Jobs.Orders;
using Handspun.Jobs.Points.Catalogue;
using Handspun.Jobs.Store;

namespace Handspun.Demo;

/// <summary>The job of the demo. All of it is invented.</summary>
internal static class DemoJob
{
    /// <summary>The true runout of the demo's shaft, in millimetres; a good one.</summary>
    public const double TrueTirMillimetres = 0.0815;

    private static readonly NewJob Order = new()
    {
        Make = "Aldermoor",
        Model = "Heron 650",
        Year = 1974,
        Odometer = 31480,
        Customer = "Demo customer",
        Title = "Weeping seal behind the timing cover: is the shaft true?",
    };

    /// <summary>The job that an earlier demo opened in the same folder, or a new one.</summary>
    public static async Task<Job> OpenAsync(JobStore store, CancellationToken cancellationToken)
    {
        var known = (await store.NewestAsync(20, cancellationToken)).FirstOrDefault(job => job.Title == Order.Title);
        return known ?? await store.OpenAsync(Order, [RunoutPoints.Pinion], cancellationToken);
    }
}
