namespace Handspun.Metrology.Decision;

/// <summary>What a result says when it is held against a limit.</summary>
public enum Verdict
{
    /// <summary>Too close to call: the limit lies inside the result's uncertainty.</summary>
    Undecided,

    /// <summary>Within the limit, by more than the uncertainty.</summary>
    Within,

    /// <summary>Over the limit (outside it, for a limit with two sides), by more than the uncertainty.</summary>
    Over,
}

/// <summary>The words for verdicts in data.</summary>
public static class VerdictCode
{
    /// <summary><c>within</c>, <c>over</c> or <c>undecided</c>.</summary>
    public static string Of(Verdict verdict) => verdict switch
    {
        Verdict.Within => "within",
        Verdict.Over => "over",
        _ => "undecided",
    };
}
