namespace Handspun.Terminal;

/// <summary>Colours text where a terminal shows it, and leaves it plain in a pipe, in a file and for whoever wants none.</summary>
/// <param name="colours">Whether there are colours.</param>
internal sealed class Paint(bool colours)
{
    /// <summary>As the terminal at hand wants it: plain where the output goes elsewhere, where NO_COLOR is set, and on a dumb one.</summary>
    public static Paint OfConsole() => new(
        !Console.IsOutputRedirected
        && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"))
        && Environment.GetEnvironmentVariable("TERM") != "dumb");

    /// <summary>A heading.</summary>
    public string Strong(string text) => Painted(text, "1");

    /// <summary>What matters less.</summary>
    public string Faint(string text) => Painted(text, "2");

    /// <summary>What is as it should be.</summary>
    public string Good(string text) => Painted(text, "32");

    /// <summary>What one should know.</summary>
    public string Mind(string text) => Painted(text, "33");

    /// <summary>What is wrong.</summary>
    public string Bad(string text) => Painted(text, "31");

    // Select Graphic Rendition, ECMA-48 section 8.3.117.
    private string Painted(string text, string rendition) => colours && text.Length > 0 ? $"\u001b[{rendition}m{text}\u001b[0m" : text;
}
