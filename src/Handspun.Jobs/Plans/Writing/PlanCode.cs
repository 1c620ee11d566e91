using System.Globalization;
using System.Text;

namespace Handspun.Jobs.Plans.Writing;

/// <summary>Names in data for what somebody gave a title.</summary>
public static class PlanCode
{
    private const int Longest = 36;   // and room for a number behind it

    /// <summary>A name of lower-case letters, digits and hyphens that is not taken yet.</summary>
    /// <param name="title">What it is called.</param>
    /// <param name="otherwise">What it is named after where no letter of the title will do.</param>
    /// <param name="taken">The names that are taken.</param>
    public static string Of(string title, string otherwise, IReadOnlyCollection<string> taken)
    {
        var plain = new StringBuilder();
        foreach (var letter in title.ToLowerInvariant())
        {
            if (letter is >= 'a' and <= 'z' or >= '0' and <= '9')
            {
                plain.Append(letter);
            }
            else if (plain.Length > 0 && plain[^1] != '-')
            {
                plain.Append('-');
            }
        }

        var name = plain.ToString().TrimStart('-', '0', '1', '2', '3', '4', '5', '6', '7', '8', '9');
        name = (name.Length > Longest ? name[..Longest] : name).Trim('-');
        name = name.Length == 0 ? otherwise : name;
        return !taken.Contains(name) ? name : Enumerable.Range(2, taken.Count + 1).Select(number => string.Create(CultureInfo.InvariantCulture, $"{name}-{number}")).First(free => !taken.Contains(free));
    }
}
