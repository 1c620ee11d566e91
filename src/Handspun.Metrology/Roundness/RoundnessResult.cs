namespace Handspun.Metrology.Roundness;

/// <summary>Whether a profile gave its reference circles.</summary>
public enum RoundnessStatus
{
    /// <summary>The circles are known.</summary>
    Measured,

    /// <summary>The profile cannot be judged; <see cref="RoundnessResult.Missing"/> says why.</summary>
    Rejected,
}

/// <summary>The reference circles of a profile and how far from round it is about each (ISO 12181-1, terms from memory).</summary>
public sealed record RoundnessResult
{
    /// <summary>Whether the circles are known.</summary>
    public required RoundnessStatus Status { get; init; }

    /// <summary>One plain sentence that says what is wrong with the profile; null where it was judged.</summary>
    public string? Missing { get; init; }

    /// <summary>The circle with the least sum of squared distances; null where rejected.</summary>
    public ReferenceCircle? LeastSquares { get; init; }

    /// <summary>The middle of the two concentric circles that hold the profile with the least distance between them; null where rejected.</summary>
    public ReferenceCircle? MinimumZone { get; init; }

    /// <summary>The smallest circle around the profile; null where rejected.</summary>
    public ReferenceCircle? MinimumCircumscribed { get; init; }

    /// <summary>The largest circle inside the profile; null where rejected, and where the profile is an open arc, which holds none.</summary>
    public ReferenceCircle? MaximumInscribed { get; init; }

    internal static RoundnessResult Reject(string missing) => new() { Status = RoundnessStatus.Rejected, Missing = missing };
}
