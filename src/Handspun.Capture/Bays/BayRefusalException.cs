namespace Handspun.Capture.Bays;

/// <summary>The bay cannot do what was asked of it now.</summary>
/// <param name="sentence">Why, and what to do.</param>
public sealed class BayRefusalException(string sentence) : Exception(sentence);
