using Handspun.Jobs.Cautions;
using Handspun.Jobs.Entries;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Metrology.Quantities;
using Handspun.Pages;

namespace Handspun.Http;

/// <summary>The form for what is read by eye, as the page shows it.</summary>
internal static class ViewOfEntry
{
    /// <summary>A form in which only the tool of the last such reading of the job stands.</summary>
    public static EntryView Empty(Job job, JobPoint point, string? way, LengthUnit unit)
    {
        var chosen = Chosen(point, way);
        var last = job.Points.SelectMany(p => p.Records).Where(record => record.Figures is TypedFigures typed && typed.Way == EntryWays.Code(chosen)).MaxBy(record => record.At);
        var tool = last?.Figures as TypedFigures;
        return Of(job, point, chosen, unit, new Dictionary<string, string>(), new TypedEntry
        {
            Unit = LengthText.Symbol(unit),
            Tool = last?.Gauge.Name,
            Division = tool is null ? null : LengthText.AsTyped(Length.FromMillimetres(tool.DivisionMillimetres), unit),
            ErrorLimit = tool?.ErrorLimitMillimetres is { } error ? LengthText.AsTyped(Length.FromMillimetres(error), unit) : null,
            By = tool?.ReadBy,
        });
    }

    /// <summary>The form as it was typed, with what is wrong.</summary>
    public static EntryView Typed(Job job, JobPoint point, string? way, TypedEntry typed, IReadOnlyDictionary<string, string> problems, LengthUnit unit) =>
        Of(job, point, Chosen(point, way), unit, problems, typed);

    private static EntryView Of(Job job, JobPoint point, EntryWay way, LengthUnit unit, IReadOnlyDictionary<string, string> problems, TypedEntry typed) => new()
    {
        Job = job.Number,
        Bike = job.Bike.Title,
        Point = point.Code,
        Title = point.Title,
        How = HowTo(point, way),
        Cautions = [.. PointCatalogue.Find(point.Code)?.Cautions ?? [], .. job.CautionsReadAt is null && IsTurned(point.Kind) ? RunoutCautions.Sentences : []],
        Limit = point.Limit is { } limit ? LimitSentence.Bounds(limit, unit) : null,
        Way = EntryWays.Code(way),
        OtherWays = [.. EntryReading.Ways(point.Code, point.Kind).Where(other => other != way).Select(other => new Choice(EntryWays.Code(other), Called(other)))],
        Readings = [.. Readings(way, typed)],
        HasDivision = way != EntryWay.Leaves,
        Tools = Tools(way),
        Typed = typed,
        Errors = problems,
    };

    private static EntryWay Chosen(JobPoint point, string? way)
    {
        var ways = EntryReading.Ways(point.Code, point.Kind);
        return ways.FirstOrDefault(one => EntryWays.Code(one) == way, ways[0]);
    }

    private static bool IsTurned(PointKind kind) => kind is PointKind.Runout or PointKind.EndPlay or PointKind.LiftCurve;

    private static string? HowTo(JobPoint point, EntryWay way) => way switch
    {
        EntryWay.Needle when point.Kind == PointKind.EndPlay => "Push to one stop and read the needle, pull to the other and read it again, both on the same turn of the dial.",
        EntryWay.Needle => "Turn slowly by hand, once round, and watch the needle. Type its highest and its lowest place, both on the same turn of the dial.",
        EntryWay.Leaves when point.Kind == PointKind.EndPlay => "Push the shaft to one stop. Type the thickest leaf that goes into the gap without force, and the next one up, which does not.",
        EntryWay.Once when point.Kind == PointKind.Bore => "Type the size that an inside micrometer shows across the bore, clean and at the temperature of the case.",
        _ => PointCatalogue.Find(point.Code)?.How,
    };

    private static string Called(EntryWay way) => way switch
    {
        EntryWay.Once => "One length off a tool",
        EntryWay.Leaves => "Leaves of a feeler gauge",
        _ => "A needle, by eye",
    };

    private static IEnumerable<EntryFieldView> Readings(EntryWay way, TypedEntry typed) => way switch
    {
        EntryWay.Once => [new("value", "The tool shows", typed.Value)],
        EntryWay.Leaves => [new("goes", "Thickest leaf that goes", typed.Goes), new("does_not_go", "Next one up, does not go", typed.DoesNotGo)],
        _ => [new("highest", "Needle, highest", typed.Highest), new("lowest", "Needle, lowest", typed.Lowest)],
    };

    private static IReadOnlyList<string> Tools(EntryWay way) => way switch
    {
        EntryWay.Once => ["micrometer", "calliper", "depth gauge", "inside micrometer"],
        EntryWay.Leaves => ["feeler gauge"],
        _ => ["dial indicator", "lever indicator"],
    };
}
