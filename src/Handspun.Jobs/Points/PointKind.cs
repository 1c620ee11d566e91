namespace Handspun.Jobs.Points;

/// <summary>How a point is measured.</summary>
public enum PointKind
{
    /// <summary>A shaft turned under the indicator.</summary>
    Runout,

    /// <summary>A shaft pushed and pulled from stop to stop.</summary>
    EndPlay,

    /// <summary>A bore gauge rocked through its turning point.</summary>
    Bore,

    /// <summary>The size of a shaft or a body across.</summary>
    OutsideSize,

    /// <summary>What a cam does to its lifter over a turn.</summary>
    LiftCurve,

    /// <summary>A tool read by eye, its reading typed.</summary>
    ByHand,

    /// <summary>Bore less body, worked out of two sizes.</summary>
    Clearance,

    /// <summary>What both lobes of a cylinder do together, worked out of two lift curves.</summary>
    CamTiming,
}

/// <summary>The words for kinds of points in data.</summary>
public static class PointKindCodes
{
    /// <summary>The code, such as <c>end-play</c>.</summary>
    public static string Of(PointKind kind) => kind switch
    {
        PointKind.Runout => "runout",
        PointKind.EndPlay => "end-play",
        PointKind.Bore => "bore",
        PointKind.OutsideSize => "outside-size",
        PointKind.LiftCurve => "lift-curve",
        PointKind.ByHand => "by-hand",
        PointKind.Clearance => "clearance",
        PointKind.CamTiming => "cam-timing",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such kind of point."),
    };

    /// <summary>The kind with that code; null where there is none.</summary>
    public static PointKind? Find(string code) => Enum.GetValues<PointKind>().Where(kind => Of(kind) == code).Select(kind => (PointKind?)kind).FirstOrDefault();
}
