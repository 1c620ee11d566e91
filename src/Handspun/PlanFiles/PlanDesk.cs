using Handspun.Http.Plans;
using Handspun.Jobs.Plans;
using Handspun.Jobs.Plans.Reading;
using Handspun.Jobs.Plans.Writing;
using Handspun.Jobs.Toml;
using Handspun.SharedFiles;
using Handspun.Station;

namespace Handspun.PlanFiles;

/// <summary>The shop's own plans, which are files in its data folder: copied, changed, put away. A plan that does not hold is never written.</summary>
/// <remarks>Jobs took a copy when they were opened: nothing here changes one.</remarks>
internal sealed class PlanDesk(PlanShelf shelf, StationOptions options)
{
    /// <summary>The longest text of a plan, in characters.</summary>
    public const int LongestText = 200_000;

    private const string Ending = ".toml";

    /// <summary>Whether a plan is the shop's own and can be changed.</summary>
    public bool IsOwn(string code) => shelf.FileOf(code) is { } file && Path.GetDirectoryName(file) == options.Data.Plans;

    /// <summary>The text of a plan with its tag.</summary>
    /// <exception cref="PlanNotFoundException">There is none.</exception>
    public TaggedText Read(string code) => SharedText.Read(shelf.FileOf(code) ?? throw new PlanNotFoundException($"There is no plan '{code}': the station has {string.Join(", ", shelf.Codes)}."));

    /// <summary>A plan as it stands; null where its text does not hold.</summary>
    public static Plan? Parse(string code, string text, out IReadOnlyList<PlanProblem> problems)
    {
        try
        {
            problems = [];
            return PlanReader.Read(code, text);
        }
        catch (PlanException e)
        {
            problems = e.Found;
            return null;
        }
    }

    /// <summary>Changes a plan of the shop.</summary>
    /// <param name="code">The plan.</param>
    /// <param name="seen">The tag of the text that was changed; null minds nobody.</param>
    /// <param name="change">The new text from the one that stands there.</param>
    /// <exception cref="PlanException">The new text does not hold; nothing was written.</exception>
    /// <exception cref="ChangedMeanwhileException">Somebody else changed it meanwhile; nothing was written.</exception>
    /// <exception cref="PlanNotFoundException">There is none, or it came along with the program.</exception>
    public TaggedText Change(string code, string? seen, Func<string, string> change) => IsOwn(code)
        ? SharedText.Change(shelf.FileOf(code)!, seen, text => Checked(code, change(text)))
        : throw new PlanNotFoundException(shelf.Codes.Contains(code)
            ? $"Plan '{code}' came along with the program and stays as it is: copy it, and change the copy."
            : $"There is no plan '{code}': the station has {string.Join(", ", shelf.Codes)}.");

    /// <summary>Makes a plan of the shop out of another, under a title of its own.</summary>
    /// <returns>The new plan's name in data.</returns>
    /// <exception cref="PlanException">The plan does not hold, or the title is missing.</exception>
    public string Copy(string from, string title)
    {
        title = title.Trim();
        if (title.Length is 0 or > 80)
        {
            throw new PlanException([new PlanProblem(from, null, "title", title.Length == 0 ? "say what the copy is called, so that it can be told from the first." : "make the title shorter: 80 characters at most.")]);
        }

        var code = PlanCode.Of(title, "plan", [.. shelf.Codes]);
        var text = TomlLines.Set(Read(from).Text, "title", TomlLines.Quoted(title));
        _ = SharedText.Change(Path.Combine(options.Data.Plans, code + Ending), TaggedText.Of("").Tag, _ => Checked(code, text));
        return code;
    }

    /// <summary>Writes a whole plan, a new one or in place of the shop's own.</summary>
    /// <param name="code">Its name in data.</param>
    /// <param name="seen">The tag of the text that it takes the place of; null minds nobody.</param>
    /// <param name="text">The text.</param>
    /// <exception cref="PlanException">It does not hold, or the name is none.</exception>
    /// <exception cref="ChangedMeanwhileException">Somebody else changed it meanwhile.</exception>
    public TaggedText Put(string code, string? seen, string text) => PlanCode.Of(code, "", []) == code && code.Length > 0
        ? SharedText.Change(Path.Combine(options.Data.Plans, code + Ending), seen, _ => Checked(code, text))
        : throw new PlanException([new PlanProblem(code, null, "", "this is no name for a plan: use up to 36 lower-case letters, digits and single hyphens, a letter first.")]);

    /// <summary>Takes a plan of the shop out of use: its file stays, under a name that is not read.</summary>
    /// <exception cref="ChangedMeanwhileException">Somebody else changed it meanwhile.</exception>
    public void PutAway(string code, string? seen)
    {
        _ = Change(code, seen, text => text);
        var file = shelf.FileOf(code)!;
        File.Move(file, file + ".away", overwrite: true);
    }

    private static string Checked(string code, string text)
    {
        if (text.Length > LongestText)
        {
            throw new PlanException([new PlanProblem(code, null, "", $"it is too long: {LongestText} characters at most.")]);
        }

        _ = PlanReader.Read(code, text);
        return text.EndsWith('\n') ? text : text + "\n";
    }
}
