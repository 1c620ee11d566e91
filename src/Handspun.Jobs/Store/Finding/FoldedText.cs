using Handspun.Jobs.Bikes;
using Handspun.Jobs.Orders;

namespace Handspun.Jobs.Store.Finding;

/// <summary>Text as it is searched: capitals and small letters of any script are one.</summary>
public static class FoldedText
{
    /// <summary>The text with its letters folded.</summary>
    // Up and down again: letters with two small forms, such as the sigma at the end of a word, then meet.
    public static string Of(string? text) => (text ?? "").ToUpperInvariant().ToLowerInvariant();

    /// <summary>The words of what was typed to search by, folded; every other sign is itself.</summary>
    public static IReadOnlyList<string> Words(string? typed) => Of(typed).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);

    /// <summary>A plate without what people write or leave out between its letters and digits; null where none are left.</summary>
    public static string? Plate(string? plate) => string.Concat(Of(plate).Where(char.IsLetterOrDigit)) is { Length: > 0 } key ? key : null;

    /// <summary>What a job is found by, beside its bike.</summary>
    internal static string Of(Job job) => Of(string.Join('\n', job.Number, job.Title, job.Customer));

    /// <summary>What a bike is found by; its plate as it was written and run together.</summary>
    internal static string Of(Bike bike) => Of(string.Join('\n', bike.Make, bike.Model, bike.Year, bike.Vin, bike.Plate, Plate(bike.Plate)));

    /// <summary>What bikes of one kind have in common.</summary>
    internal static string Kind(Bike bike) => Of($"{bike.Make.Trim()}\n{bike.Model.Trim()}");
}
