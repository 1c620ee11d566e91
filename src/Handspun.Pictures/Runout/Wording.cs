using Handspun.Jobs.Lengths;
using Handspun.Metrology.Decision;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;
using Handspun.Pictures.Page;
using Handspun.Pictures.Scales;

namespace Handspun.Pictures.Runout;

/// <summary>The sentences on the runout picture.</summary>
internal static class Wording
{
    /// <summary>A limit, as it follows "limit" or "limit of".</summary>
    public static string Limit(Tolerance limit, LengthUnit unit) => (limit.Lower, limit.Upper) switch
    {
        (null, { } upper) => LengthText.Of(upper, unit),
        ({ } lower, null) => $"at least {LengthText.Of(lower, unit)}",
        ({ } lower, { } upper) => $"{LengthText.Of(lower, unit)} to {LengthText.Of(upper, unit)}",
        _ => throw new ArgumentException("A limit has a bound.", nameof(limit)),
    };

    /// <summary>What the result says against its limit.</summary>
    public static string Decision(Verdict? verdict, Tolerance? limit, LengthUnit unit)
    {
        var of = limit is null ? "" : $" of {Limit(limit, unit)}";
        return verdict switch
        {
            Verdict.Within => $"Within the limit{of}",
            Verdict.Over => $"{(limit?.Lower is null ? "Over" : "Outside")} the limit{of}",
            Verdict.Undecided => limit is null ? "Too close to call" : $"Too close to call: the limit is {Limit(limit, unit)}",
            _ => limit is null ? "No limit given" : $"Limit {Limit(limit, unit)}",
        };
    }

    /// <summary>What stands at the top of the picture.</summary>
    public static HeadingWords Heading(RunoutPictureContent content) => new(
        content.Title,
        content.Subtitle,
        content.Result is { Status: RunoutStatus.Measured, Tir: { } tir } ? $"TIR {LengthText.Of(tir, content.Unit)}" : null,
        content.Result.TirU95,
        Decision(content.Verdict, content.Limit, content.Unit),
        content.Verdict,
        content.Unit);

    /// <summary>Where zero degrees is, as it follows "from".</summary>
    public static string Zero(AngleReference reference) => reference switch
    {
        AngleReference.Index => "the index",
        AngleReference.Mark => "the reference mark",
        AngleReference.Encoder => "the encoder's zero",
        _ => "the first reading",
    };

    /// <summary>Where zero degrees is, in one word where one will do.</summary>
    public static string ShortZero(AngleReference reference) => reference switch
    {
        AngleReference.Index => "index",
        AngleReference.Mark => "mark",
        AngleReference.Encoder => "encoder",
        _ => "first reading",
    };

    /// <summary>A direction in whole degrees, 0 to 359.</summary>
    public static string Degrees(double degrees) => $"{Digits.Of(Math.Round(degrees) % 360, 0)}°";

    /// <summary>The high spot with its uncertainty, where that is known.</summary>
    public static string HighSpot(RunoutResult result, double degrees) => result.HighSpotU95Degrees is { } within
        ? $"high spot {Degrees(degrees)} ± {Digits.Of(Math.Max(1, within), 0)}°"
        : $"high spot {Degrees(degrees)}";

    /// <summary>What the result rests on, what was left out, and what makes it less sure.</summary>
    public static IEnumerable<string> Notes(RunoutPictureContent content)
    {
        var result = content.Result;
        var basis = new List<string>();
        if (result.Turns > 0)
        {
            basis.Add($"{Digits.Of(result.Turns, 1)} turns");
        }

        basis.Add($"{result.Readings} readings");
        basis.Add(LeftOut(result.Rejected));
        if (result.TirU95 is not null)
        {
            basis.Add("± is the expanded uncertainty, k = 2");
        }

        yield return $"{string.Join(" · ", basis)}.";
        if (result.TirByTurnMillimetres.Count is > 1 and <= 8)
        {
            var turns = result.TirByTurnMillimetres.Select(tir => LengthText.Of(Length.FromMillimetres(tir), content.Unit));
            yield return $"Runout of each whole turn by itself: {string.Join(", ", turns)}.";
        }

        foreach (var words in FaultMarks.InWords(result.Faults, content.Unit))
        {
            yield return words;
        }

        foreach (var warning in result.Warnings)
        {
            yield return RunoutWarningText.Sentence(warning);
        }
    }

    private static string LeftOut(IReadOnlyList<RejectedReading> rejected)
    {
        int Of(RejectionReason reason) => rejected.Count(left => left.Reason == reason);
        (int Count, string Words)[] parts =
        [
            (Of(RejectionReason.Knock), Of(RejectionReason.Knock) == 1 ? "knock" : "knocks"),
            (Of(RejectionReason.Standing), "because the shaft stood still"),
            (Of(RejectionReason.Stuck), "because the gauge stuck"),
            (Of(RejectionReason.LocalFault), "on a narrow place"),
        ];
        var said = parts.Where(part => part.Count > 0).Select(part => $"{part.Count} {part.Words}").ToList();
        return said.Count == 0 ? "none left out" : $"left out: {string.Join(", ", said)}";
    }

    /// <summary>The whole result in words.</summary>
    public static string Summary(RunoutPictureContent content)
    {
        var result = content.Result;
        if (result.Status != RunoutStatus.Measured)
        {
            return Missing(result);
        }

        var doubt = result.TirU95 is { } u95 ? $" ± {LengthText.Uncertainty(u95, content.Unit)}" : "";
        var high = result.HighSpot is { } spot
            ? $" The {HighSpot(result, spot.Degrees)} from {Zero(result.Reference)}."
            : "";
        return $"TIR {LengthText.Of(result.Tir!.Value, content.Unit)}{doubt}. {Decision(content.Verdict, content.Limit, content.Unit)}.{high}";
    }

    /// <summary>Why there is no runout.</summary>
    public static string Missing(RunoutResult result) => result.Missing ?? "No runout could be measured from these readings.";
}
