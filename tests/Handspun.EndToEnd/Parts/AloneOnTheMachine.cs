namespace Handspun.EndToEnd.Parts;

/// <summary>Tests that run one after another when all others are done, because what they measure goes by the clock of the machine.</summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public sealed class AloneOnTheMachine
{
    /// <summary>What tests name it by.</summary>
    public const string Name = "alone on the machine";
}
