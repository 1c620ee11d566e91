using Handspun.Wire;

namespace Handspun.Finding;

/// <summary>A gauge that is watched, one JSON object a line.</summary>
/// <param name="State">How it is, as a station publishes it.</param>
/// <param name="Mm">Its newest reading, in millimetres; null before there is one.</param>
/// <param name="AgeS">How long ago that came, in seconds.</param>
internal sealed record WatchMessage(GaugeStateMessage State, double? Mm, double? AgeS);
