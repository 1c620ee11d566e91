using System.Text.Json;
using Handspun.Capture.Bays;
using Handspun.Capture.Methods;
using Handspun.Gauges.Journal;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Jobs.ShopGauges;

namespace Handspun.Capture.Finishing;

/// <summary>What a capture was to find, as the head of its journal keeps it: a replay asks the same and gets the same answer.</summary>
public sealed record JournalledTask
{
    /// <summary>The kind of point, as a code.</summary>
    public required string Kind { get; init; }

    /// <summary>Turns, cycles or passes that were enough.</summary>
    public required double Wanted { get; init; }

    /// <summary>What was said of the point when the capture began; null where nothing was.</summary>
    public PointSetup? Setup { get; init; }

    /// <summary>What the result was held against; null where there was no limit.</summary>
    public Limit? Limit { get; init; }

    /// <summary>The gauge's newest check when the capture began; null where it was never checked.</summary>
    public LastCheck? LastCheck { get; init; }

    /// <summary>What the method was asked for.</summary>
    public MethodWish Wish => new(Wanted, Setup);

    /// <summary>A bay's task as its journal keeps it.</summary>
    public static string TextOf(BayTask task) => JsonSerializer.Serialize(
        new JournalledTask { Kind = PointKindCodes.Of(task.Kind), Wanted = task.Wanted, Setup = task.Setup, Limit = task.Limit, LastCheck = task.LastCheck }, FiguresJson.Options);

    /// <summary>Reads what a journal keeps; null where it keeps nothing.</summary>
    /// <exception cref="JournalException">It was written by a later version, or by somebody else.</exception>
    public static JournalledTask? Read(string? text)
    {
        try
        {
            return text is null ? null : JsonSerializer.Deserialize<JournalledTask>(text, FiguresJson.Options);
        }
        catch (Exception e) when (e is JsonException or NotSupportedException)
        {
            throw new JournalException("The journal's 'task' is not one that this version reads: replay it with the version that wrote it.", e);
        }
    }
}
