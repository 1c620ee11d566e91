namespace Handspun.Pictures.Lettering;

/// <summary>A font file that the program brings along is not where it belongs, or is not a font.</summary>
public sealed class MissingFontException : Exception
{
    /// <summary>Names the file and what to do.</summary>
    public MissingFontException(string path)
        : base($"The font file {path} is missing or damaged. Without it a picture would have no text; build or install the program again.") =>
        Path = path;

    /// <summary>Where the file should be.</summary>
    public string Path { get; }
}
