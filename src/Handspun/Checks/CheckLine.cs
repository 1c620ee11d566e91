namespace Handspun.Checks;

/// <summary>How something that was checked is.</summary>
internal enum CheckMark
{
    /// <summary>As it should be.</summary>
    Good,

    /// <summary>It works, and one should know something.</summary>
    Mind,

    /// <summary>It must be mended.</summary>
    Failing,
}

/// <summary>One thing that was checked.</summary>
/// <param name="Subject">What.</param>
/// <param name="Mark">How it is.</param>
/// <param name="Sentence">The same in words; where something is wrong it says what to do.</param>
internal sealed record CheckLine(string Subject, CheckMark Mark, string Sentence)
{
    /// <summary>The mark's code in data.</summary>
    public string Code => Mark switch
    {
        CheckMark.Good => "ok",
        CheckMark.Mind => "mind",
        _ => "failing",
    };

    /// <summary>As it should be.</summary>
    public static CheckLine Good(string subject, string sentence) => new(subject, CheckMark.Good, sentence);

    /// <summary>Something that one should know.</summary>
    public static CheckLine Mind(string subject, string sentence) => new(subject, CheckMark.Mind, sentence);

    /// <summary>Something that must be mended.</summary>
    public static CheckLine Failing(string subject, string sentence) => new(subject, CheckMark.Failing, sentence);
}
