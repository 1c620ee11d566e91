using System.Globalization;
using Handspun.Jobs.Records;
using Handspun.Metrology.GaugeStudy;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.ShopGauges;

/// <summary>What a gauge's last check means for what is measured with it.</summary>
public static class GaugeDoubt
{
    private const string Counted = "The uncertainty counts with the error that the check leaves room for.";

    /// <summary>The gauge was never checked.</summary>
    public static RecordWarning NeverChecked { get; } =
        new("gauge-never-checked", "The gauge was never checked: check it against a gauge block or a setting ring before anything is decided by it.");

    /// <summary>The warnings that belong on every record that is made with a gauge on a day; none where its last check was passed and still counts.</summary>
    /// <param name="check">Its last check; null where it has none.</param>
    /// <param name="day">The day, in the shop.</param>
    public static IEnumerable<RecordWarning> Warnings(LastCheck? check, DateOnly day)
    {
        if (check is null)
        {
            yield return NeverChecked;
            yield break;
        }

        if (check.On(day) == GaugeStanding.Failed)
        {
            yield return new("gauge-check-failed", $"The gauge was beyond its error limit when it was last checked: measure with another one. {Counted}");
        }

        if (check.On(day) == GaugeStanding.Undecided)
        {
            yield return new("gauge-check-undecided", $"The gauge's last check was too close to call: check it again with more readings or a surer block. {Counted}");
        }

        if (day > check.DueOn)
        {
            yield return new("gauge-check-overdue", string.Create(CultureInfo.InvariantCulture, $"The gauge was due for a check on {check.DueOn:d MMM yyyy}: check it against a block or a ring."));
        }
    }

    /// <summary>The error that an uncertainty has to count with: the largest of what the profile states, what the check was held against and what it found.</summary>
    /// <param name="check">Its last check; null where it has none.</param>
    /// <param name="stated">What its profile states, ± this much; zero where it does not say.</param>
    /// <remarks>A check that was passed never makes it smaller: one block does not vouch for the whole travel.</remarks>
    public static Length ErrorLimit(LastCheck? check, Length stated) => check is null
        ? stated
        : Length.FromMillimetres(Math.Max(stated.Millimetres, Math.Max(check.ErrorLimitMillimetres, check.LargestError.Millimetres)));
}
