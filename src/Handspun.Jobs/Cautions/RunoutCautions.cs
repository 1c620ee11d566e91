namespace Handspun.Jobs.Cautions;

/// <summary>What must be so before a shaft is turned by hand. Shown before the first spin of every job.</summary>
/// <remarks>Common practice, no source; the machine's service manual and local rules come first.</remarks>
public static class RunoutCautions
{
    /// <summary>The cautions, one sentence each.</summary>
    public static IReadOnlyList<string> Sentences { get; } =
    [
        "The machine's service manual and a licensed mechanic come before this tool.",
        "The machine is secured on its lift and cannot roll or tip.",
        "The wheel is clear of the floor and of everything else.",
        "The spark plugs are out.",
        "The ignition is off and the battery is disconnected.",
        "Hands, hair and sleeves are clear of chain, belt and sprockets.",
        "The shaft is turned by hand only: no starter, no power tool.",
    ];
}
