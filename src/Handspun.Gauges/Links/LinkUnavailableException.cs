namespace Handspun.Gauges.Links;

/// <summary>Why a port could not be opened.</summary>
public enum LinkFault
{
    /// <summary>There is no such device, or nothing listens there.</summary>
    Absent,

    /// <summary>This user may not open it.</summary>
    NotPermitted,

    /// <summary>Another program holds it.</summary>
    Busy,

    /// <summary>It is there, but it is not a port of that kind or refuses the settings.</summary>
    NotAPort,
}

/// <summary>A port cannot be opened now.</summary>
/// <param name="fault">Why.</param>
/// <param name="sentence">One plain sentence that says what to do.</param>
/// <param name="inner">What the operating system said.</param>
public sealed class LinkUnavailableException(LinkFault fault, string sentence, Exception? inner = null) : IOException(sentence, inner)
{
    /// <summary>Why the port could not be opened.</summary>
    public LinkFault Fault { get; } = fault;
}
