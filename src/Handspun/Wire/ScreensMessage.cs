namespace Handspun.Wire;

/// <summary>How a screen is paired now, and which are.</summary>
/// <param name="Address">What a screen opens to be paired; null where the station serves this machine only.</param>
/// <param name="Code">The code that is in it, once.</param>
/// <param name="EndsAt">When it is no longer taken.</param>
/// <param name="Screens">The paired screens.</param>
internal sealed record ScreensMessage(Uri? Address, string? Code, DateTimeOffset? EndsAt, IReadOnlyList<ScreenMessage> Screens);

/// <summary>One paired screen.</summary>
/// <param name="Screen">Its number.</param>
/// <param name="From">The address it had when it was paired.</param>
/// <param name="PairedAt">When that was.</param>
/// <param name="SeenAt">When it last asked for something since the station was started; null where it has not.</param>
internal sealed record ScreenMessage(int Screen, string From, DateTimeOffset PairedAt, DateTimeOffset? SeenAt);
