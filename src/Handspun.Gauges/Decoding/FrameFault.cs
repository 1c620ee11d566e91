namespace Handspun.Gauges.Decoding;

/// <summary>What was wrong with a frame.</summary>
public enum FrameFault
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>It holds no number where one was expected.</summary>
    NotANumber,

    /// <summary>It names a unit that the profile does not know.</summary>
    UnknownUnit,

    /// <summary>It is longer than any frame of this gauge.</summary>
    TooLong,

    /// <summary>Bytes that belong to no frame, or a frame that broke off.</summary>
    Incomplete,

    /// <summary>It is too short for what the profile looks for in it.</summary>
    TooShort,

    /// <summary>Its check sum does not fit its bytes.</summary>
    BadCheck,

    /// <summary>It does not have the shape that the profile describes.</summary>
    NoMatch,

    /// <summary>The gauge answered that it cannot do what it was asked.</summary>
    Refused,
}
