namespace Handspun.Jobs.Plans;

/// <summary>What to tell a customer at a gate where the plan has no words of its own.</summary>
/// <remarks>Common practice, no source.</remarks>
public static class GateWords
{
    /// <summary>The verdict is over the limit.</summary>
    public const string Over = "We measured before buying parts, and this is outside the limit. Parts fitted on top of it would wear early. We have stopped and ask how you want to go on: have it put right first, go on knowing this, or leave it here.";

    /// <summary>The verdict is undecided.</summary>
    public const string Undecided = "We measured before buying parts, and the result is so near the limit that we cannot say yes or no. We would like to measure again or ask a specialist before any money goes into parts.";
}
