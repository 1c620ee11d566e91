using Handspun.Jobs.Lengths;
using Handspun.Metrology.EndPlay;
using Handspun.Pictures.Page;
using Handspun.Pictures.Readings;
using Handspun.Pictures.Runout;

namespace Handspun.Pictures.EndPlay;

/// <summary>The sentences on the end play picture.</summary>
internal static class EndPlayWording
{
    public static HeadingWords Heading(EndPlayPictureContent content) => new(
        content.Title,
        content.Subtitle,
        content.Result is { Status: EndPlayStatus.Measured, EndPlay: { } play } ? $"End play {LengthText.Of(play, content.Unit)}" : null,
        content.Result.EndPlayU95,
        Wording.Decision(content.Verdict, content.Limit, content.Unit),
        content.Verdict,
        content.Unit);

    /// <summary>The cycles by themselves, of a measured end play.</summary>
    public static RepeatsContent Cycles(EndPlayPictureContent content) => new(
        "Every cycle by itself", "cycle", "End play", content.Result.ByCycleMillimetres, content.Result.EndPlay!.Value, content.Result.EndPlayU95, content.Limit, content.Unit, FromZero: true);

    /// <summary>What the result rests on, what was left out, and what makes it less sure.</summary>
    public static IEnumerable<string> Notes(EndPlayPictureContent content)
    {
        var result = content.Result;
        var aside = result.Holds.Count(hold => !hold.Counts);
        yield return BasisNote.Basis(
            (result.Cycles, "cycle"), (result.Holds.Count - aside, "hold"), (result.Readings, "reading"), result.Knocks.Count, aside == 0 ? null : $"{BasisNote.Counted(aside, "hold")} left out", result.EndPlayU95 is not null);
        if (result.Spread is { } spread)
        {
            yield return $"From the smallest cycle to the largest: {LengthText.Of(spread, content.Unit)}.";
        }

        foreach (var warning in result.Warnings)
        {
            yield return EndPlayWarningText.Sentence(warning);
        }
    }

    /// <summary>The whole result in words.</summary>
    public static string Summary(EndPlayPictureContent content) => content.Result is { Status: EndPlayStatus.Measured, EndPlay: { } play } result
        ? $"End play {(result.EndPlayU95 is { } u95 ? LengthText.WithUncertainty(play, u95, content.Unit) : LengthText.Of(play, content.Unit))}. {Wording.Decision(content.Verdict, content.Limit, content.Unit)}."
        : Missing(content.Result);

    /// <summary>Why there is no end play.</summary>
    public static string Missing(EndPlayResult result) => result.Missing ?? "No end play could be measured from these readings.";
}
