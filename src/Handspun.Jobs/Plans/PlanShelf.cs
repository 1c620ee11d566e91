using Handspun.Jobs.Plans.Reading;

namespace Handspun.Jobs.Plans;

/// <summary>The plans at hand: the shop's own first, then the shipped ones. Each is a file <c>CODE.toml</c>.</summary>
/// <param name="folders">Where to look, the first that has the code wins; a folder that is not there is passed over.</param>
public sealed class PlanShelf(params IReadOnlyList<string> folders)
{
    private const string Ending = ".toml";

    /// <summary>The plan that a form proposes.</summary>
    public const string Usual = "quick-runout";

    /// <summary>Where the shipped plans lie, beside the program.</summary>
    public static string ShippedFolder { get; } = Path.Combine(AppContext.BaseDirectory, "plans");

    /// <summary>The codes of all plans, in order.</summary>
    public IReadOnlyList<string> Codes => [.. Files.Keys.Order(StringComparer.Ordinal)];

    /// <summary>Reads the plan of that code.</summary>
    /// <exception cref="PlanException">There is none, or it does not hold.</exception>
    public Plan Find(string code) => Files.TryGetValue(code, out var file)
        ? PlanReader.Read(code, File.ReadAllText(file))
        : throw new PlanException([new(code, null, "", "it is not there.") { Whole = $"There is no plan '{code}': use one of {string.Join(", ", Codes)}, or put {code}{Ending} into the data folder's plans." }]);

    /// <summary>The file of a plan; null where there is none.</summary>
    public string? FileOf(string code) => Files.GetValueOrDefault(code);

    /// <summary>Every plan that holds, in the order of their codes, and what is wrong with those that do not.</summary>
    public (IReadOnlyList<Plan> Plans, IReadOnlyList<string> Problems) All()
    {
        var (plans, problems) = (new List<Plan>(), new List<string>());
        foreach (var code in Codes)
        {
            try
            {
                plans.Add(Find(code));
            }
            catch (PlanException e)
            {
                problems.AddRange(e.Problems);
            }
        }

        return (plans, problems);
    }

    // Found by looking, never joined from what was asked for: a code cannot reach outside the folders.
    private Dictionary<string, string> Files => folders
        .Where(Directory.Exists)
        .SelectMany(folder => Directory.EnumerateFiles(folder, "*" + Ending))
        .GroupBy(file => Path.GetFileNameWithoutExtension(file), StringComparer.Ordinal)
        .ToDictionary(same => same.Key, same => same.First(), StringComparer.Ordinal);
}
