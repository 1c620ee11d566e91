using Handspun.Jobs.Lengths;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Store;

namespace Handspun.Jobs.Book.Acts;

/// <summary>A limit as it was typed.</summary>
/// <param name="AtLeast">The lower bound with its unit; nothing where there is none.</param>
/// <param name="AtMost">The upper bound with its unit; nothing where there is none.</param>
/// <param name="Source">Where it comes from.</param>
/// <param name="Drive"><c>chain</c> or <c>gear</c>; nothing for both.</param>
/// <param name="Age"><c>new</c> or <c>service</c>; nothing where nobody says.</param>
public sealed record TypedLimit(string? AtLeast, string? AtMost, string? Source, string? Drive = null, string? Age = null);

/// <summary>What can be written about the limits of points.</summary>
public static class LimitActs
{
    /// <summary>Sets the limit of a point without standing by it.</summary>
    /// <exception cref="BookRefusalException">Something cannot be read, or has no source.</exception>
    /// <exception cref="JobNotFoundException">There is no such point.</exception>
    public static Deed Set(Job job, string point, TypedLimit typed) => Write(job, point, typed, limit => limit);

    /// <summary>Confirms the limit of a point: somebody looked it up in the manual, and says where.</summary>
    /// <param name="job">The job.</param>
    /// <param name="point">The point's name in data.</param>
    /// <param name="typed">What was typed; the source names the manual and its page.</param>
    /// <param name="by">Who looked it up.</param>
    /// <param name="at">When.</param>
    /// <exception cref="BookRefusalException">Something cannot be read, or no page is named.</exception>
    /// <exception cref="JobNotFoundException">There is no such point.</exception>
    public static Deed Confirm(Job job, string point, TypedLimit typed, string? by, DateTimeOffset at) =>
        typed.Source?.Any(char.IsDigit) == true && typed.Source.Any(char.IsLetter)
            ? Write(job, point, typed, limit => limit with { ConfirmedBy = by?.Trim(), ConfirmedAt = at })
            : throw new BookRefusalException("source", "Type which manual it is and on which page the limit stands: that is what confirms it.");

    private static LimitSet Write(Job job, string point, TypedLimit typed, Func<Limit, Limit> signed)
    {
        if (!job.Points.Exists(p => p.Code == point))
        {
            throw JobNotFoundException.Point(job.Number, point);
        }

        var bounds = LimitBounds.Read(("at least", Blank(typed.AtLeast)), ("at most", Blank(typed.AtMost)));
        var condition = LimitCondition.Read(Blank(typed.Drive), Blank(typed.Age));
        var problem = bounds.Problem ?? condition.Problem ?? (bounds.IsEmpty ? "A limit has a smallest value, a largest one, or both. " + LengthText.HowToWrite : null);
        if (problem is not null)
        {
            throw new BookRefusalException(condition.Problem is not null && bounds.Problem is null ? "drive" : "at_most", char.ToUpperInvariant(problem[0]) + problem[1..]);
        }

        var source = Typed.Needed("source", typed.Source, "Say where the limit comes from: the manual and its page, or that it has no source.");
        return new(signed(bounds.ToLimit(source, null) with { Drive = condition.Drive, Age = condition.Age }), InWords(typed));
    }

    private static string InWords(TypedLimit typed) => (Blank(typed.AtLeast), Blank(typed.AtMost)) switch
    {
        ({ } lower, { } upper) => $"{lower} to {upper}",
        ({ } lower, null) => $"at least {lower}",
        (_, { } upper) => $"at most {upper}",
        _ => "",
    };

    private static string? Blank(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();
}
