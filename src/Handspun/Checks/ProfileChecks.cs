using Handspun.Gauges.Profiles;
using Handspun.Station;

namespace Handspun.Checks;

/// <summary>The profiles, and the shop's own file.</summary>
internal static class ProfileChecks
{
    /// <summary>Every profile that does not hold; one line where all do.</summary>
    public static IEnumerable<CheckLine> All(ProfileShelf shelf)
    {
        const string subject = "Profiles";
        var sound = 0;
        foreach (var name in shelf.Names)
        {
            IReadOnlyList<string> problems = [];
            try
            {
                _ = shelf.Find(name);
                sound++;
            }
            catch (ProfileException e)
            {
                problems = e.Problems;
            }

            foreach (var problem in problems)
            {
                yield return CheckLine.Failing(subject, problem);
            }
        }

        yield return sound > 0
            ? CheckLine.Good(subject, $"{sound} {(sound == 1 ? "profile holds" : "profiles hold")}.")
            : CheckLine.Failing(subject, $"There is no profile that holds: the shipped ones lie in {ProfileShelf.ShippedFolder}; install the program again.");
    }

    /// <summary>Whether <c>shop.toml</c> holds.</summary>
    public static CheckLine Shop(DataFolder data)
    {
        const string subject = "Shop file";
        try
        {
            _ = ShopFile.Read(data.Shop);
            return CheckLine.Good(subject, File.Exists(data.Shop) ? $"{data.Shop} holds." : "There is none, and none is needed: lengths are shown in inches.");
        }
        catch (StationTroubleException e)
        {
            return CheckLine.Failing(subject, e.Message);
        }
    }
}
