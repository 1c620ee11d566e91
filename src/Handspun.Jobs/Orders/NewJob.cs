using System.Text.RegularExpressions;

namespace Handspun.Jobs.Orders;

/// <summary>What is asked for when a job is opened.</summary>
public sealed partial record NewJob
{
    private const int FirstYear = 1885;   // the first motorcycle
    private const int LongestText = 120;
    private const int LongestPlate = 20;

    /// <summary>Who made the bike.</summary>
    public string? Make { get; init; }

    /// <summary>What the bike is called.</summary>
    public string? Model { get; init; }

    /// <summary>Model year.</summary>
    public int? Year { get; init; }

    /// <summary>Vehicle identification number, where it is known.</summary>
    public string? Vin { get; init; }

    /// <summary>Its number plate, where it is known.</summary>
    public string? Plate { get; init; }

    /// <summary>What the instrument shows.</summary>
    public int? Odometer { get; init; }

    /// <summary>Who brought it.</summary>
    public string? Customer { get; init; }

    /// <summary>What is to be done.</summary>
    public string? Title { get; init; }

    /// <summary>The code of the plan that the job takes a copy of; nothing opens it without a plan, for the runout of both shaft ends.</summary>
    public string? Plan { get; init; }

    /// <summary>All that is wrong, by field; empty where the job can be opened.</summary>
    /// <param name="thisYear">The year now; a bike may be of the next model year.</param>
    public IReadOnlyDictionary<string, string> Problems(int thisYear)
    {
        var problems = new Dictionary<string, string>();
        Text(problems, "make", Make, "Say who made the bike.");
        Text(problems, "model", Model, "Say which model it is.");
        Text(problems, "title", Title, "Say in a few words what is to be done.");
        Text(problems, "customer", Customer, null);
        if (Plate?.Trim().Length > LongestPlate)
        {
            problems["plate"] = $"A plate has at most {LongestPlate} characters; leave it empty where it is not known.";
        }

        if (Year is not { } year || year < FirstYear || year > thisYear + 1)
        {
            problems["year"] = $"Give the model year, {FirstYear} to {thisYear + 1}.";
        }

        if (Odometer is < 0 or > 9_999_999)
        {
            problems["odometer"] = "Give what the odometer shows as a whole number, or leave it empty.";
        }

        // ISO 3779 allows no I, O or Q in 17 characters; older frames carry shorter numbers of the maker's own.
        if (!string.IsNullOrWhiteSpace(Vin) && !FrameNumber().IsMatch(Vin.Trim()))
        {
            problems["vin"] = "A VIN has up to 17 letters and digits and no spaces; leave it empty where it is not known.";
        }

        return problems;
    }

    private static void Text(Dictionary<string, string> problems, string field, string? text, string? missing)
    {
        if (missing is not null && string.IsNullOrWhiteSpace(text))
        {
            problems[field] = missing;
        }
        else if (text?.Trim().Length > LongestText)
        {
            problems[field] = $"Make it shorter: {LongestText} characters at most.";
        }
    }

    [GeneratedRegex("^[A-Za-z0-9]{3,17}$", RegexOptions.CultureInvariant)]
    private static partial Regex FrameNumber();
}
