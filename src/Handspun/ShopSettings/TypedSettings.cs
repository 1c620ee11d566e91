using System.Globalization;
using Handspun.Jobs.Lengths;
using Handspun.Station;

namespace Handspun.ShopSettings;

/// <summary>The shop's settings as somebody typed them.</summary>
/// <param name="Unit"><c>in</c> or <c>mm</c>.</param>
/// <param name="Places">How many decimals are shown.</param>
/// <param name="StepAfter">Seconds before the bay goes on by itself.</param>
/// <param name="Mechanics">Names.</param>
internal sealed record TypedSettings(string? Unit, string? Places, string? StepAfter, IReadOnlyList<string> Mechanics)
{
    private const int LongestName = 60;   // as long as a name in a job's book
    private const int MostNames = 60;

    /// <summary>Reads them.</summary>
    /// <param name="problems">What is wrong, one sentence a field: <c>unit, step_after_s, mechanics</c>.</param>
    /// <returns>The settings; null where something is wrong.</returns>
    public ShopFile? Read(out IReadOnlyDictionary<string, string> problems)
    {
        var found = new Dictionary<string, string>();
        problems = found;
        var unit = long.TryParse(Places, NumberStyles.None, CultureInfo.InvariantCulture, out var places) ? LengthUnits.Find(Unit, places)
            : string.IsNullOrWhiteSpace(Places) ? LengthUnits.Find(Unit) : null;
        if (unit is null)
        {
            found["unit"] = "Choose inches with 4 or 3 decimals, or millimetres with 3 or 2.";
        }

        if (!long.TryParse(StepAfter?.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var seconds) || seconds > ShopFile.LongestStepSeconds)
        {
            found["step_after_s"] = $"Type whole seconds, from 0 to {ShopFile.LongestStepSeconds}; 0 lets the bay wait for you.";
        }

        var names = Mechanics.Select(name => name.Trim()).Where(name => name.Length > 0).ToList();
        if (NamesProblem(names) is { } problem)
        {
            found["mechanics"] = problem;
        }

        return found.Count > 0 ? null : new ShopFile(unit!.Value, TimeSpan.FromSeconds(seconds)) { Mechanics = names };
    }

    private static string? NamesProblem(List<string> names) =>
        names.Count > MostNames ? $"Write {MostNames} names at most."
        : names.Find(name => name.Length > LongestName) is { } longest ? $"'{longest[..20]}…' is too long: {LongestName} characters at most."
        : names.Find(name => name.Any(char.IsControl)) is not null ? "A name has letters and blanks only: write each on a line of its own."
        : names.GroupBy(name => name, StringComparer.OrdinalIgnoreCase).FirstOrDefault(same => same.Count() > 1) is { } twice ? $"'{twice.Key}' stands twice: leave one out, or add what tells them apart."
        : null;
}
