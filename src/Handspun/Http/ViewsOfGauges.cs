using System.Globalization;
using Handspun.Gauges.Listening;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.ShopGauges;
using Handspun.Metrology.GaugeStudy;
using Handspun.Metrology.Quantities;
using Handspun.Pages;
using Handspun.ShopGauges;

namespace Handspun.Http;

/// <summary>The gauges of the shop as the pages show them.</summary>
internal static class ViewsOfGauges
{
    /// <summary>The list.</summary>
    public static GaugeListView List(IReadOnlyList<KnownGauge> gauges, DateOnly today) => new([.. gauges.Select(gauge => new GaugeLine(
        gauge.Name,
        gauge.Kept?.Description,
        StandingOf(gauge.LastCheck, today),
        LinkOf(gauge),
        gauge.LastCheck is { } check ? $"Checked {GaugeWords.Day(GaugeWords.DayOf(check.At))}, due {GaugeWords.Day(check.DueOn)}" : null))]);

    /// <summary>One gauge.</summary>
    public static GaugeView Gauge(KnownGauge gauge, DateOnly today, LengthUnit unit) => new()
    {
        Name = gauge.Name,
        Description = gauge.Kept?.Description,
        Standing = StandingOf(gauge.LastCheck, today),
        PluggedIn = gauge.State is not null,
        Facts = [.. Facts(gauge, unit)],
        Sheet =
        [
            new("description", "What it is", gauge.Kept?.Description ?? ""),
            new("check_every_days", "Days between checks", (gauge.Kept?.CheckEveryDays ?? ShopGauge.UsualDays).ToString(CultureInfo.InvariantCulture)),
            new("resolution", "Smallest step", LengthText.AsTyped(gauge.Kept?.ResolutionMillimetres, unit), "empty: as its profile says"),
            new("error_limit", "Error limit of its papers", LengthText.AsTyped(gauge.Kept?.ErrorLimitMillimetres, unit), "empty: as its profile says"),
        ],
        CheckFields = [.. CheckFields(gauge, unit)],
        ReadingsHint = ReadingsText.HowToWrite,
        Checks = [.. (gauge.Kept?.ChecksNewestFirst ?? []).Select(check => Check(check, unit))],
        StudyHint = StudyLines.HowToWrite,
        Studies = [.. (gauge.Kept?.StudiesNewestFirst ?? []).Select(study => ViewOfStudy.Of(study, unit))],
    };

    private static IEnumerable<Fact> Facts(KnownGauge gauge, LengthUnit unit)
    {
        yield return new("Now", LinkOf(gauge));
        if (gauge.Profile is { } profile)
        {
            yield return new("Profile", profile.Name);
        }

        yield return new("Smallest step", gauge.ResolutionMillimetres is { } step ? LengthText.Fine(Length.FromMillimetres(step), unit) : "not known");
        yield return new("Error limit", gauge.ErrorLimitMillimetres is { } limit ? $"± {LengthText.Fine(Length.FromMillimetres(limit), unit)}" : "not known");
        yield return new("Checked every", string.Create(CultureInfo.InvariantCulture, $"{gauge.Kept?.CheckEveryDays ?? ShopGauge.UsualDays} days"));
        if (gauge.LastCheck is { } check)
        {
            yield return new("Due", GaugeWords.Day(check.DueOn));
        }
    }

    private static IEnumerable<TypedField> CheckFields(KnownGauge gauge, LengthUnit unit)
    {
        var inches = unit.IsInch;
        yield return new("by", "Who", "", Required: true);
        yield return new("against", "Block or ring", "", "which, and its certificate's number", Required: true);
        yield return new("size", "Its size", "", inches ? "such as 0.2 in" : "such as 5 mm", Required: true);
        yield return new("deviation", "Deviation by the certificate", "", "such as -0.15 µm");
        yield return new("size_u95", "Known to within ±", "", "k = 2, such as 0.2 µm", Required: true);
        yield return new("zeroed_on", "Gauge zeroed on", "", "the size of that block or ring; empty where it shows sizes from its own zero");
        if (gauge.ErrorLimitMillimetres is null)
        {
            yield return new("error_limit", "Error limit of its papers", "", inches ? "such as 0.0002 in" : "such as 0.004 mm", Required: true);
        }

        if (gauge.ResolutionMillimetres is null)
        {
            yield return new("resolution", "Its smallest step", "", inches ? "such as 0.00005 in" : "such as 0.001 mm", Required: true);
        }

        yield return new("due_on", "Due again on", "", "such as 2027-03-01; empty: after its days");
    }

    private static GaugeCheckView Check(KeptCheck check, LengthUnit unit) => new(
        GaugeWords.Day(GaugeWords.DayOf(check.At)),
        GaugeWords.Error(check.ErrorMillimetres, check.ErrorU95Millimetres, unit),
        $"± {LengthText.Fine(Length.FromMillimetres(check.Sheet.ErrorLimitMillimetres), unit)} allowed",
        StandingOf(check.Standing),
        [
            new("Against", check.Sheet.Against),
            new("By", check.Sheet.By),
            new("Readings", check.Sheet.ReadingsMillimetres.Count.ToString(CultureInfo.InvariantCulture)),
            new("Standard deviation", LengthText.Fine(Length.FromMillimetres(check.RepeatabilityMillimetres), unit)),
            new("Due", GaugeWords.Day(check.DueOn)),
        ]);

    private static StandingView StandingOf(LastCheck? check, DateOnly day) => check is null
        ? new(VerdictView.None, "Never checked", GaugeDoubt.NeverChecked.Sentence)
        : StandingOf(check.On(day));

    private static StandingView StandingOf(GaugeStanding standing)
    {
        var (shape, word) = standing switch
        {
            GaugeStanding.Good => (VerdictView.Within, "Good"),
            GaugeStanding.Failed => (VerdictView.Over, "Failed"),
            GaugeStanding.Overdue => (VerdictView.Undecided, "Overdue"),
            _ => (VerdictView.Undecided, "Too close to call"),
        };
        return new(shape, word, GaugeStandingText.Sentence(standing));
    }

    private static string LinkOf(KnownGauge gauge) => gauge.State switch
    {
        null => "Not plugged in here",
        { Condition: GaugeCondition.Reading } state => $"Reading at {state.Port}",
        { } state => state.Sentence,
    };
}
