using System.Text.Json;
using Handspun.Jobs.Bikes;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Points;

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

    public static JobMessage Of(Job job, LengthUnit unit) => new()
    {
        Job = job.Number,
        Title = job.Title,
        Customer = job.Customer,
        OpenedAt = job.OpenedAt,
        Bike = BikeMessage.Of(job.Bike),
        CautionsReadAt = job.CautionsReadAt,
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
internal sealed record BikeMessage(string Make, string Model, int Year, string? Vin, int? Odometer)
{
    public static BikeMessage Of(Bike bike) => new(bike.Make, bike.Model, bike.Year, bike.Vin, bike.Odometer);
}

/// <summary>A point of a job.</summary>
internal sealed record PointMessage(string Point, string Title, string Kind, Dictionary<string, JsonElement>? Setup, LimitMessage? Limit, string? Counting, IReadOnlyList<ResultMessage> Records);
