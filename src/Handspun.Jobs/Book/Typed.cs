namespace Handspun.Jobs.Book;

/// <summary>Words as somebody typed them.</summary>
internal static class Typed
{
    private const int Longest = 2000;

    /// <summary>Without blanks at the ends; null where nothing was typed.</summary>
    /// <exception cref="BookRefusalException">They are too long.</exception>
    public static string? Words(string field, string? text) => string.IsNullOrWhiteSpace(text) ? null
        : text.Trim() is { Length: <= Longest } words ? words
        : throw new BookRefusalException(field, $"Make it shorter: {Longest} characters at most.");

    /// <summary>The same where something must be typed.</summary>
    /// <exception cref="BookRefusalException">Nothing was typed, or too much.</exception>
    public static string Needed(string field, string? text, string missing) => Words(field, text) ?? throw new BookRefusalException(field, missing);
}
