using Handspun.Jobs.Points;

namespace Handspun.Jobs.Entries;

/// <summary>How a length is read by eye and typed.</summary>
public enum EntryWay
{
    /// <summary>One length, as the tool shows it.</summary>
    Once,

    /// <summary>A gap by its leaves: the thickest that goes in, and the next, which does not.</summary>
    Leaves,

    /// <summary>The highest and the lowest place of a needle over a movement.</summary>
    Needle,
}

/// <summary>The words for them in data, and where they fit.</summary>
public static class EntryWays
{
    /// <summary>The code, such as <c>needle</c>.</summary>
    public static string Code(EntryWay way) => way switch
    {
        EntryWay.Once => "once",
        EntryWay.Leaves => "leaves",
        EntryWay.Needle => "needle",
        _ => throw new ArgumentOutOfRangeException(nameof(way), way, "There is no such way to read a tool."),
    };

    /// <summary>The ways that fit a kind of point, the usual one first; none where nothing is typed.</summary>
    public static IReadOnlyList<EntryWay> Of(PointKind kind) => kind switch
    {
        PointKind.Runout or PointKind.LiftCurve => [EntryWay.Needle],
        PointKind.EndPlay => [EntryWay.Needle, EntryWay.Leaves],
        PointKind.Bore or PointKind.OutsideSize => [EntryWay.Once],
        PointKind.ByHand => [EntryWay.Once, EntryWay.Leaves],
        _ => [],
    };
}
