namespace Handspun.Terminal;

/// <summary>Lines that are shown again and again: over one another where the output is a terminal, below one another elsewhere.</summary>
/// <param name="output">Where they go.</param>
/// <param name="redraws">Whether they are drawn over one another.</param>
internal sealed class LiveLines(TextWriter output, bool redraws)
{
    private int _drawn;

    /// <summary>Whether they are drawn over one another.</summary>
    public bool Redraws => redraws;

    /// <summary>Shows the lines.</summary>
    public void Show(IEnumerable<string> lines)
    {
        var shown = lines.ToList();

        // Cursor up, and erase to the end of the line and of the page: ECMA-48 sections 8.3.22, 8.3.41 and 8.3.39.
        var (back, clear) = redraws ? (_drawn > 0 ? $"\u001b[{_drawn}A" : "", "\u001b[K") : ("", "");
        output.Write(back + string.Concat(shown.Select(line => line + clear + Environment.NewLine)) + (redraws ? "\u001b[J" : ""));
        output.Flush();
        _drawn = shown.Count;
    }
}
