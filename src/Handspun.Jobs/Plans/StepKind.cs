using System.Text.Json.Serialization;

namespace Handspun.Jobs.Plans;

/// <summary>What is done in a step.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<StepKind>))]
public enum StepKind
{
    /// <summary>A point is measured.</summary>
    Point,

    /// <summary>Something is seen to and ticked with a name.</summary>
    Check,

    /// <summary>Something is looked at, and what is found is written down.</summary>
    Finding,
}

/// <summary>The words for kinds of steps in data.</summary>
public static class StepKindCodes
{
    /// <summary>All of them, by their codes.</summary>
    public static IReadOnlyDictionary<string, StepKind> All { get; } = new Dictionary<string, StepKind>
    {
        ["point"] = StepKind.Point,
        ["check"] = StepKind.Check,
        ["finding"] = StepKind.Finding,
    };

    /// <summary><c>point</c>, <c>check</c> or <c>finding</c>.</summary>
    public static string Of(StepKind kind) => All.First(known => known.Value == kind).Key;
}
