using Handspun.Gauges.Links;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Listening;

/// <summary>One gauge of the shop: its name, how it talks and where it is plugged in.</summary>
/// <param name="Name">What the shop calls it.</param>
/// <param name="Profile">How it talks.</param>
/// <param name="Port">Where it is plugged in.</param>
public sealed record GaugeSetup(GaugeName Name, GaugeProfile Profile, GaugePort Port);
