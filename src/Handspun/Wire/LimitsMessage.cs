namespace Handspun.Wire;

/// <summary>The limits of the open jobs, a page of them, and those that a new job starts with.</summary>
/// <param name="InUse">Not confirmed first, then by job, newest first.</param>
/// <param name="Count">How many there are in all open jobs.</param>
/// <param name="Unconfirmed">How many of them nobody has confirmed.</param>
/// <param name="Shipped">What a new job starts with.</param>
internal sealed record LimitsMessage(IReadOnlyList<LimitInUseMessage> InUse, int Count, int Unconfirmed, IReadOnlyList<ShippedLimitMessage> Shipped);

/// <summary>The limit of a point of an open job.</summary>
internal sealed record LimitInUseMessage(string Job, string Bike, string Point, string PointTitle, LimitMessage Limit);

/// <summary>A limit that a new job starts with; <c>plan</c> is null where it comes with the point and not from a plan.</summary>
internal sealed record ShippedLimitMessage(string? Plan, string Point, string PointTitle, LimitMessage Limit);
