namespace Handspun.Gauges.Listening;

/// <summary>A gauge cannot do what was asked of it now.</summary>
/// <param name="sentence">Why, and what to do.</param>
public sealed class GaugeRefusalException(string sentence) : Exception(sentence);
