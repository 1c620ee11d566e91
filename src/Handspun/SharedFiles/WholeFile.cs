namespace Handspun.SharedFiles;

/// <summary>Writes a text file beside its place and then renames it: a power cut leaves the old text or the new one.</summary>
internal static class WholeFile
{
    /// <summary>Writes it, in place of what stands there.</summary>
    /// <param name="path">The file.</param>
    /// <param name="text">All of its text.</param>
    public static void Write(string path, string text)
    {
        var part = path + ".part";
        File.WriteAllText(part, text);
        File.Move(part, path, overwrite: true);
    }
}
