namespace Handspun.Jobs.Book;

/// <summary>What can be seen on a part, as codes and as words.</summary>
public static class FindingSigns
{
    /// <summary>All looks as it should.</summary>
    public const string Sound = "as-it-should-be";

    /// <summary>Each code with its words, in the order to be shown.</summary>
    public static IReadOnlyDictionary<string, string> All { get; } = new Dictionary<string, string>
    {
        [Sound] = "As it should be",
        ["wear"] = "Wear",
        ["scoring"] = "Scoring",
        ["debris"] = "Debris",
        ["heat"] = "Heat marks",
        ["crack"] = "Crack or chip",
        ["leak"] = "Leak",
    };
}

/// <summary>What becomes of a part, as codes and as words.</summary>
public static class PartChoices
{
    /// <summary>Each code with its choice, in the order to be shown.</summary>
    public static IReadOnlyDictionary<string, PartChoice> All { get; } = new Dictionary<string, PartChoice>
    {
        ["keep"] = PartChoice.Keep,
        ["replace"] = PartChoice.Replace,
        ["measure-again"] = PartChoice.MeasureAgain,
    };

    /// <summary>The code.</summary>
    public static string Of(PartChoice choice) => All.First(known => known.Value == choice).Key;

    /// <summary>The words, such as <c>Measure again</c>.</summary>
    public static string InWords(PartChoice choice) => choice switch
    {
        PartChoice.Keep => "Keep",
        PartChoice.Replace => "Replace",
        _ => "Measure again",
    };
}
