using System.Security.Cryptography;
using System.Text;

namespace Handspun.SharedFiles;

/// <summary>A text file that several people may change: who changes it says which text they had before them, and overwrites no other.</summary>
internal static class SharedText
{
    private static readonly Lock Writing = new();

    /// <summary>The text of a file, empty where there is none, with its tag.</summary>
    public static TaggedText Read(string path) => TaggedText.Of(File.Exists(path) ? File.ReadAllText(path) : "");

    /// <summary>Changes a file; a power cut leaves the old text or the new one.</summary>
    /// <param name="path">The file.</param>
    /// <param name="seen">The tag of the text that was changed; null changes whatever stands there.</param>
    /// <param name="change">The new text, from the one that stands there. What it throws leaves the file as it is.</param>
    /// <returns>The text that stands there now.</returns>
    /// <exception cref="ChangedMeanwhileException">Another text stands there.</exception>
    public static TaggedText Change(string path, string? seen, Func<string, string> change)
    {
        lock (Writing)
        {
            var before = Read(path);
            if (seen is not null && seen != before.Tag)
            {
                throw new ChangedMeanwhileException(before);
            }

            var after = TaggedText.Of(change(before.Text));
            WholeFile.Write(path, after.Text);
            return after;
        }
    }
}

/// <summary>A text and what tells it from others.</summary>
/// <param name="Text">The text.</param>
/// <param name="Tag">The same for the same text, without quotes.</param>
internal sealed record TaggedText(string Text, string Tag)
{
    public static TaggedText Of(string text) => new(text, Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)))[..16]);
}

/// <summary>Somebody changed the file since it was looked at; nothing was written.</summary>
/// <param name="now">What stands there now.</param>
internal sealed class ChangedMeanwhileException(TaggedText now)
    : Exception("Somebody saved something else here meanwhile. Look at what stands there now, then send yours again if it still holds.")
{
    /// <summary>What stands there now.</summary>
    public TaggedText Now { get; } = now;
}
