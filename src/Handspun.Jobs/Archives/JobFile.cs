using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Handspun.Jobs.Bikes;
using Handspun.Jobs.Book;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;

namespace Handspun.Jobs.Archives;

/// <summary>A whole job as a JSON document that another station can take in: the bike, plan, points, limits, records and book, without a store's keys.</summary>
/// <remarks>Its published schema is <c>job-1.json</c>.</remarks>
public sealed record JobFile
{
    /// <summary>What the document says it is.</summary>
    public const string Name = "handspun-job";

    /// <summary>The newest version that this program writes and reads.</summary>
    public const int Newest = 1;

    private static readonly JsonSerializerOptions Options = Create();

    /// <summary><see cref="Name"/>.</summary>
    public required string Format { get; init; }

    /// <summary>The version of the document, from 1.</summary>
    public required int Version { get; init; }

    /// <summary>The job.</summary>
    public required Job Job { get; init; }

    /// <summary>Writes a job.</summary>
    public static byte[] Write(Job job) => JsonSerializer.SerializeToUtf8Bytes(new JobFile { Format = Name, Version = Newest, Job = job }, Options);

    /// <summary>Reads a job.</summary>
    /// <param name="json">The document.</param>
    /// <param name="number">The number that it gets here; null leaves its own.</param>
    /// <exception cref="JobFileException">It is no such document, or a newer one.</exception>
    public static Job Read(byte[] json, string? number = null)
    {
        try
        {
            var root = JsonNode.Parse(json) as JsonObject;
            if (root?["format"]?.GetValue<string>() != Name)
            {
                throw new JobFileException("its job.json is no job of this program.");
            }

            if (root["version"]!.GetValue<int>() > Newest)
            {
                throw new JobFileException("it comes from a newer version of this program: bring this station up to date first.");
            }

            if (number is not null)
            {
                root["job"]!["number"] = number;
            }

            return root.Deserialize<JobFile>(Options)!.Job;
        }
        catch (Exception e) when (e is JsonException or NullReferenceException or InvalidOperationException or FormatException or NotSupportedException)
        {
            throw new JobFileException("its job.json does not hold; it was altered, or it comes from a newer version of this program.");
        }
    }

    private static JsonSerializerOptions Create()
    {
        var options = FiguresJson.Create();
        options.WriteIndented = true;
        options.UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow;
        options.Converters.Add(new JsonStringEnumConverter(JsonNamingPolicy.KebabCaseLower));
        options.TypeInfoResolver = new DefaultJsonTypeInfoResolver { Modifiers = { WithoutKeys } };
        return options;
    }

    // What a store calls a row is nobody else's business.
    private static void WithoutKeys(JsonTypeInfo type)
    {
        string[] keys = type.Type switch
        {
            var t when t == typeof(Job) => ["id", "bike_id"],
            var t when t == typeof(Bike) => ["id"],
            var t when t == typeof(JobPoint) => ["id", "job_id"],
            var t when t == typeof(BookEntry) => ["id", "job_id"],
            var t when t == typeof(CaptureRecord) => ["job_point_id"],
            _ => [],
        };
        foreach (var property in type.Properties.Where(property => keys.Contains(property.Name)).ToList())
        {
            type.Properties.Remove(property);
        }
    }
}

/// <summary>A document that cannot be taken in as a job.</summary>
/// <param name="sentence">Why, to follow the name of what was read.</param>
public sealed class JobFileException(string sentence) : Exception(sentence);
