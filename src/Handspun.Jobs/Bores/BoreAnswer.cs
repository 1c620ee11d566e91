using Handspun.Jobs.Lengths;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Metrology.Bore;
using Handspun.Metrology.Decision;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Bores;

/// <summary>What the records of a bore say together: its size, its taper and its out-of-round over the places that were measured.</summary>
/// <remarks>
/// Each place counts once, by its newest record that has a result, or by the one that was picked to count. Only records of one
/// setting are put together, that of the newest: what the setting leaves in doubt then falls out of every difference.
/// </remarks>
/// <param name="Form">Size, taper and out-of-round; of the deviation from the gauge's zero where the setting is not known.</param>
/// <param name="HasSize">Whether the setting is known, so that these are sizes.</param>
/// <param name="Places">The records that were put together, by depth and then by the clock.</param>
/// <param name="Verdict">What the smallest and the largest place say against the limit, the worse of the two; null where there is no limit or no size.</param>
/// <param name="LeftOut">Records with a result that were left out: of another setting, or of a place that was not said.</param>
public sealed record BoreAnswer(BoreForm Form, bool HasSize, IReadOnlyList<(BorePlace Place, CaptureRecord Record)> Places, Verdict? Verdict, int LeftOut)
{
    private const int DepthDecimals = 1;   // a rule tells no more
    private const double HoursOfHalfATurn = 6;

    /// <summary>What the records of a point say together; null where no record names its place.</summary>
    public static BoreAnswer? Of(JobPoint point)
    {
        var complete = point.NewestFirst
            .OrderByDescending(record => record.Id == point.PickedRecordId)
            .Where(record => record is { Status: RecordStatus.Complete, Figures: BoreFigures { DeviationMillimetres: not null } })
            .ToArray();
        var placed = complete.Where(record => Figures(record) is { DepthMillimetres: not null, ClockHours: not null }).ToArray();
        if (placed.Length == 0)
        {
            return null;
        }

        var newest = Figures(placed.MaxBy(record => record.At)!);
        var together = placed.Where(record => SettingOf(Figures(record)) == SettingOf(newest)).ToArray();
        var places = together
            .Select(record => (Place: PlaceOf(Figures(record)), Record: record))
            .DistinctBy(at => (at.Place.Depth, at.Place.ClockHours))
            .OrderBy(at => at.Place.Depth).ThenBy(at => at.Place.ClockHours)
            .ToArray();
        var hasSize = newest.SizeMillimetres is not null;
        var shared = Length.FromMillimetres(newest.SharedU95Millimetres ?? 0);
        var form = BoreSurvey.Of([.. places.Select(at => at.Place)], shared);
        return new(form, hasSize, places, hasSize ? VerdictOf(form, shared, point.Limit) : null, complete.Length - together.Length);
    }

    /// <summary>The same in words.</summary>
    public string Sentence => string.Join(' ', Sentences());

    /// <summary>The same in figures, in the order to be shown.</summary>
    public IEnumerable<Figure> ToShow(LengthUnit unit)
    {
        yield return new(HasSize ? "Mean size" : "Mean deviation", LengthText.WithUncertainty(Form.Size, Form.SizeU95, unit));
        if (Places.Count > 1)
        {
            yield return new("Smallest", At(Form.Smallest, unit));
            yield return new("Largest", At(Form.Largest, unit));
        }

        if (Form is { Taper: { } taper, TaperU95: { } taperU95 })
        {
            yield return new("Taper, mouth to bottom", LengthText.WithUncertainty(taper, taperU95, unit));
        }

        if (Form is { OutOfRound: { } round, OutOfRoundU95: { } roundU95 })
        {
            yield return new("Out of round", LengthText.WithUncertainty(round, roundU95, unit));
        }
    }

    private IEnumerable<string> Sentences()
    {
        yield return Form.Sentence;
        if (!HasSize && Places.Count > 1)
        {
            yield return "This holds only where the gauge's zero was not touched in between.";
        }

        if (LeftOut > 0)
        {
            yield return $"{(LeftOut == 1 ? "One record is" : $"{LeftOut} records are")} left out: made with another setting, or at a place that was not said.";
        }
    }

    private static string At(BorePlace place, LengthUnit unit) =>
        $"{LengthText.Of(place.Size, unit)}, {BorePlaces.InWords(place.Depth.Millimetres, ClockOf(place), unit)}";

    /// <summary>A direction as hours are spoken: 12 for the one straight up.</summary>
    public static double ClockOf(BorePlace place) => place.ClockHours == 0 ? 12 : place.ClockHours;

    private static BoreFigures Figures(CaptureRecord record) => (BoreFigures)record.Figures;

    private static (double? Setting, double? U95, double Shown) SettingOf(BoreFigures figures) =>
        (figures.SettingMillimetres, figures.SettingU95Millimetres, figures.ShownMillimetres);

    private static BorePlace PlaceOf(BoreFigures figures) => new(
        Length.FromMillimetres(Math.Round(figures.DepthMillimetres!.Value, DepthDecimals)),
        figures.ClockHours!.Value % HoursOfHalfATurn,
        Length.FromMillimetres((figures.SizeMillimetres ?? figures.DeviationMillimetres)!.Value),
        Length.FromMillimetres(figures.OwnU95Millimetres ?? 0));

    private static Verdict? VerdictOf(BoreForm form, Length shared, Limit? limit)
    {
        if (limit is null)
        {
            return null;
        }

        Verdict Judge(BorePlace place) => ConformityRule.Decide(
            place.Size,
            Length.FromMillimetres(Math.Sqrt(Math.Pow(place.OwnU95.Millimetres, 2) + Math.Pow(shared.Millimetres, 2))),
            limit.Tolerance).Verdict;
        var (smallest, largest) = (Judge(form.Smallest), Judge(form.Largest));
        return smallest == Metrology.Decision.Verdict.Over || largest == Metrology.Decision.Verdict.Over ? Metrology.Decision.Verdict.Over
            : smallest == Metrology.Decision.Verdict.Undecided || largest == Metrology.Decision.Verdict.Undecided ? Metrology.Decision.Verdict.Undecided
            : Metrology.Decision.Verdict.Within;
    }
}
