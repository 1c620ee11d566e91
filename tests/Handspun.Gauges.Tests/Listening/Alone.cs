namespace Handspun.Gauges.Tests.Listening;

/// <summary>Tests that count what the whole process holds, or that want both cores: nothing else runs beside them.</summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public class Alone
{
    public const string Name = "alone";
}
