using System.Text.Json;
using Handspun.Jobs.Bikes;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Points;
using Handspun.Jobs.Standing;

namespace Handspun.Wire;

/// <summary>A job with its bike, points and records.</summary>
internal sealed record JobMessage
{
    public required string Job { get; init; }

    public required string Title { get; init; }

    public string? Customer { get; init; }

    public required DateTimeOffset OpenedAt { get; init; }

    public required BikeMessage Bike { get; init; }

    public DateTimeOffset? CautionsReadAt { get; init; }

    public required IReadOnlyList<PointMessage> Points { get; init; }

    /// <summary>How many lines the job's book has; its ETag.</summary>
    public required int Version { get; init; }

    public DateTimeOffset? ClosedAt { get; init; }

    public string? Plan { get; init; }

    public required IReadOnlyList<StepMessage> Steps { get; init; }

    public required IReadOnlyList<FindingMessage> Findings { get; init; }

    public required IReadOnlyList<PartMessage> Parts { get; init; }

    public static JobMessage Of(Job job, LengthUnit unit) => new()
    {
        Job = job.Number,
        Title = job.Title,
        Customer = job.Customer,
        OpenedAt = job.OpenedAt,
        Bike = BikeMessage.Of(job.Bike),
        CautionsReadAt = job.CautionsReadAt,
        Version = job.Version,
        ClosedAt = job.ClosedAt,
        Plan = job.Plan?.Code,
        Steps = [.. JobStanding.Of(job).Steps.Select(step => StepMessage.Of(step, unit))],
        Findings = [.. JobFindings.Of(job).Select(FindingMessage.Of)],
        Parts = [.. JobParts.Of(job).Select(PartMessage.Of)],
        Points = [.. job.InOrder.Select(point => new PointMessage(
            point.Code,
            point.Title,
            PointKindCodes.Of(point.Kind),
            SetupMessage.KeysOf(point.Setup),
            LimitMessage.Of(point.Limit),
            point.Counting?.Id,
            [.. point.NewestFirst.Select(record => ResultMessage.Of(job.Number, point.Code, record, unit))]))],
    };
}

/// <summary>A bike.</summary>
internal sealed record BikeMessage(string Make, string Model, int Year, string? Vin, string? Plate, int? Odometer)
{
    public static BikeMessage Of(Bike bike) => new(bike.Make, bike.Model, bike.Year, bike.Vin, bike.Plate, bike.Odometer);
}

/// <summary>A point of a job.</summary>
internal sealed record PointMessage(string Point, string Title, string Kind, Dictionary<string, JsonElement>? Setup, LimitMessage? Limit, string? Counting, IReadOnlyList<ResultMessage> Records);
