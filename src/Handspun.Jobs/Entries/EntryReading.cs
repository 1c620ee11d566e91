using Handspun.Jobs.Lengths;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Metrology.HandReading;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Entries;

/// <summary>Reads what was typed at a point: what is wrong with it by field, or the figures and the tool of a record.</summary>
public sealed record EntryReading
{
    private const int LongestText = 60;
    private const double CoarsestDivision = 2;

    /// <summary>All that is wrong, by the field's name (<c>value, goes, does_not_go, highest, lowest, tool, division, error_limit, by</c>), each with what to do; empty where there is a result.</summary>
    public required IReadOnlyDictionary<string, string> Problems { get; init; }

    /// <summary>The figures; null where something is wrong.</summary>
    public TypedFigures? Figures { get; init; }

    /// <summary>The tool, as the record's gauge; null likewise.</summary>
    public RecordGauge? Tool { get; init; }

    /// <summary>What makes the result less sure than it looks.</summary>
    public IReadOnlyList<RecordWarning> Warnings { get; init; } = [];

    /// <summary>The ways in which a point may be read and typed, the usual one first; none where its result comes from elsewhere.</summary>
    public static IReadOnlyList<EntryWay> Ways(string code, PointKind kind) => PointCatalogue.Find(code)?.ReadBy ?? EntryWays.Of(kind);

    /// <summary>Reads an entry.</summary>
    public static EntryReading Of(JobPoint point, TypedEntry entry)
    {
        var problems = new Dictionary<string, string>();
        var ways = Ways(point.Code, point.Kind);
        if (ways.Count == 0)
        {
            problems["value"] = $"{point.Title} is not typed: it is worked out from other points.";
            return new() { Problems = problems };
        }

        if (WayOf(entry, ways) is not { } way)
        {
            problems[FieldsOf(ways[0])[0].Name] = $"At {Lowered(point.Title)}, type {string.Join(", or ", ways.Select(Asks))}.";
            return new() { Problems = problems };
        }

        var fields = new EntryFields(entry, problems);
        var typed = FieldsOf(way).Select(field => fields.Length(field.Name, field.Of(entry), below: way == EntryWay.Needle)).ToArray();
        var division = way == EntryWay.Leaves ? Length.FromMillimetres(CoarsestDivision) : fields.Length("division", entry.Division);
        var error = fields.Optional("error_limit", entry.ErrorLimit);
        var tool = fields.Text("tool", entry.Tool, "Say what it was read from, such as a micrometer.", LongestText);
        var by = fields.Text("by", entry.By, "Say who read it.", LongestText);
        if (division?.Millimetres > CoarsestDivision)
        {
            problems["division"] = $"A division of {LengthText.AsTyped(division.Value, LengthUnit.Millimetre)} is too coarse to measure with: type the smallest step that the tool can be read to, with its unit.";
        }

        if (problems.Count > 0)
        {
            return new() { Problems = problems };
        }

        var hand = new HandTool(KindOf(way), division!.Value, error ?? Length.Zero);
        var plausible = PlausibleAt.Of(point.Code, point.Kind);
        var measured = way switch
        {
            EntryWay.Once => HandMeasurement.Once(hand, typed[0]!.Value, plausible.Bounds, plausible.What),
            EntryWay.Leaves => HandMeasurement.Gap(hand, typed[0]!.Value, typed[1]!.Value, plausible.Bounds, plausible.What),
            _ => HandMeasurement.Needle(hand, typed[0]!.Value, typed[1]!.Value, plausible.Bounds.Most, plausible.What),
        };
        if (measured is not { Value: { } value, U95: { } u95 })
        {
            problems[FieldsOf(way)[0].Name] = measured.Missing!;
            return new() { Problems = problems };
        }

        var step = way == EntryWay.Leaves ? typed[1]!.Value - typed[0]!.Value : division.Value;
        return new()
        {
            Problems = problems,
            Figures = FiguresOf(point, new(way, value, u95, step, error, fields.Typed(FieldsOf(way)), by!)),
            Tool = new RecordGauge { Name = tool!, Profile = "by-hand", Port = "", ResolutionMillimetres = step.Millimetres, ErrorLimitMillimetres = error?.Millimetres ?? 0 },
            Warnings = [.. WarningsOf(way, error)],
        };
    }

    private static TypedFigures FiguresOf(JobPoint point, Found found) => point.Kind is PointKind.OutsideSize or PointKind.Bore
        ? new SizeFigures
        {
            Inside = point.Kind == PointKind.Bore,
            Way = EntryWays.Code(found.Way),
            Typed = found.Typed,
            ReadBy = found.By,
            DivisionMillimetres = found.Step.Millimetres,
            ErrorLimitMillimetres = found.Error?.Millimetres,
            Readings = 1,
            SizeMillimetres = found.Value.Millimetres,
            SizeU95Millimetres = found.U95.Millimetres,
        }
        : new HandFigures
        {
            Named = found.Way == EntryWay.Needle ? $"{point.Title}, read by eye" : point.Title,
            Way = EntryWays.Code(found.Way),
            Typed = found.Typed,
            ReadBy = found.By,
            DivisionMillimetres = found.Step.Millimetres,
            ErrorLimitMillimetres = found.Error?.Millimetres,
            Readings = FieldsOf(found.Way).Count,
            LengthMillimetres = found.Value.Millimetres,
            LengthU95Millimetres = found.U95.Millimetres,
        };

    private static IEnumerable<RecordWarning> WarningsOf(EntryWay way, Length? error)
    {
        if (way == EntryWay.Needle)
        {
            yield return RecordWarning.ReadByEye;
        }

        if (error is null && way != EntryWay.Leaves)
        {
            yield return RecordWarning.ToolErrorUnknown;
        }
    }

    private static EntryWay? WayOf(TypedEntry entry, IReadOnlyList<EntryWay> ways) => ways
        .Where(way => FieldsOf(way).Any(field => !string.IsNullOrWhiteSpace(field.Of(entry))))
        .Select(way => (EntryWay?)way)
        .FirstOrDefault();

    internal static IReadOnlyList<EntryField> FieldsOf(EntryWay way) => way switch
    {
        EntryWay.Once => [new("value", entry => entry.Value)],
        EntryWay.Leaves => [new("goes", entry => entry.Goes), new("does_not_go", entry => entry.DoesNotGo)],
        _ => [new("highest", entry => entry.Highest), new("lowest", entry => entry.Lowest)],
    };

    private static string Asks(EntryWay way) => way switch
    {
        EntryWay.Once => "what the tool shows (value)",
        EntryWay.Leaves => "the thickest leaf that goes in and the next one up (goes, does_not_go)",
        _ => "the needle's highest and lowest place (highest, lowest)",
    };

    private static HandToolKind KindOf(EntryWay way) => way switch
    {
        EntryWay.Once => HandToolKind.ThicknessGauge,
        EntryWay.Leaves => HandToolKind.FeelerGauge,
        _ => HandToolKind.Needle,
    };

    private static string Lowered(string title) => char.ToLowerInvariant(title[0]) + title[1..];

    private readonly record struct Found(EntryWay Way, Length Value, Length U95, Length Step, Length? Error, string Typed, string By);
}
