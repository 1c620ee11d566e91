using Handspun.Jobs.Lengths;
using Handspun.Metrology.Bore;
using Handspun.Pictures.Page;
using Handspun.Pictures.Readings;
using Handspun.Pictures.Runout;

namespace Handspun.Pictures.Bore;

/// <summary>The sentences on the bore picture.</summary>
internal static class BoreWording
{
    private const string NoSize = "The deviation from the gauge's zero: no limit is held against it";

    public static HeadingWords Heading(BorePictureContent content) => new(
        content.Title,
        content.Subtitle,
        content.Value is { } found ? $"{Name(content)} {LengthText.Of(found.Value, content.Unit)}" : null,
        content.Value?.U95,
        HasNoSize(content) ? NoSize : Wording.Decision(content.Verdict, content.Limit, content.Unit),
        content.Verdict,
        content.Unit);

    /// <summary>The passes by themselves, of a measured bore.</summary>
    public static RepeatsContent Passes(BorePictureContent content) => new(
        "Every pass by itself",
        "pass",
        Name(content),
        [.. content.Result.ByPass.Select(content.OfPass)],
        content.Value!.Value.Value,
        content.Value.Value.U95,
        content.Limit,
        content.Unit,
        FromZero: false);

    /// <summary>Where it was, what the result rests on, what was left out, and what makes it less sure.</summary>
    public static IEnumerable<string> Notes(BorePictureContent content)
    {
        var result = content.Result;
        if (content.Place is { } place)
        {
            yield return $"{char.ToUpperInvariant(place[0])}{place[1..]}.";
        }

        yield return BasisNote.Basis((result.Passes, "pass"), null, (result.Readings, "reading"), result.Knocks.Count, null, result.DeviationU95 is not null);
        if (result.Spread is { } spread)
        {
            yield return $"From the smallest pass to the largest: {LengthText.Of(spread, content.Unit)}.";
        }

        foreach (var warning in result.Warnings)
        {
            yield return BoreWarningText.Sentence(warning, result.Outside);
        }
    }

    /// <summary>The whole result in words.</summary>
    public static string Summary(BorePictureContent content) => content.Value is { } found
        ? $"{Name(content)} {(found.U95 is { } u95 ? LengthText.WithUncertainty(found.Value, u95, content.Unit) : LengthText.Of(found.Value, content.Unit))}. {(HasNoSize(content) ? NoSize : Wording.Decision(content.Verdict, content.Limit, content.Unit))}."
        : Missing(content.Result);

    /// <summary>Why there is no result.</summary>
    public static string Missing(BoreResult result) => result.Missing ?? $"No {(result.Outside ? "size" : "bore")} could be measured from these readings.";

    private static bool HasNoSize(BorePictureContent content) => content.Result is { Status: BoreStatus.Measured, Size: null };

    private static string Name(BorePictureContent content) => HasNoSize(content) ? "Deviation" : content.Result.Outside ? "Size across" : "Bore";
}
