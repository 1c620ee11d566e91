namespace Handspun.EndToEnd.Parts;

/// <summary>A shop's own profile for labelled text that also tells when an index passes.</summary>
internal static class IndexedProfile
{
    public const string Text =
        """
        title = "Labelled text with an index"
        [link]
        baud = 38400
        [frame]
        kind = "text-pattern"
        pattern = 'ch=[0-9]+;v=(?<value>-?[0-9]+\.[0-9]+);u=(?<unit>[a-z]+);s=(?<flag>[A-Z]?)'
        [flags]
        index = "I"
        [index]
        source = "token"
        [value]
        unit = "mm"
        resolution_mm = 0.001
        error_limit_mm = 0.003
        """;
}
