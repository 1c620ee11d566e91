namespace Handspun.Pages;

/// <summary>What the bay's page says before its script has asked the station; all of it may be unknown.</summary>
/// <param name="PointTitle">The point that is measured; null when the bay is idle.</param>
/// <param name="JobId">The job in addresses; null when the bay is idle.</param>
/// <param name="IsStation">Whether it is shown on the station itself, where screens are paired.</param>
public sealed record BayView(string? PointTitle = null, string? JobId = null, bool IsStation = false);
