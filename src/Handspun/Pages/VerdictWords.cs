namespace Handspun.Pages;

/// <summary>The words and codes that go with a verdict on a page.</summary>
internal static class VerdictWords
{
    public static string Of(VerdictView verdict, bool hasResult = true) => verdict switch
    {
        VerdictView.Within => "Within the limit",
        VerdictView.Over => "Over the limit",
        VerdictView.Undecided => "Too close to call",
        _ => hasResult ? "No verdict" : "No result",
    };

    public static string Code(VerdictView verdict) => verdict switch
    {
        VerdictView.Within => "within",
        VerdictView.Over => "over",
        VerdictView.Undecided => "undecided",
        _ => "none",
    };
}
