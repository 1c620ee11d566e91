using System.Text.Json.Serialization;

namespace Handspun.Jobs.Book;

/// <summary>What was found in a look.</summary>
/// <param name="Signs">Codes of what was seen (<see cref="FindingSigns"/>); may be empty.</param>
/// <param name="Words">In words of one's own; empty where the signs say it.</param>
/// <param name="Place">Where, such as <c>feed side</c>; null where nobody said.</param>
/// <param name="Step">The step in which it was found; null where it was found besides.</param>
/// <param name="Part">The part that it is about; null where it is about none.</param>
public sealed record FindingNoted(IReadOnlyList<string> Signs, string Words, string? Place, string? Step, string? Part) : Deed;

/// <summary>A photo was added. The picture itself lies in the job's folder.</summary>
/// <param name="Photo">The name of its file.</param>
/// <param name="Width">Pixels across, as it is to be seen.</param>
/// <param name="Height">Pixels down, as it is to be seen.</param>
/// <param name="Bytes">Its size.</param>
/// <param name="Sha256">The digest of its bytes, in lower-case hexadecimal.</param>
/// <param name="Caption">What it shows; null where nobody said.</param>
public sealed record PhotoAdded(string Photo, int Width, int Height, long Bytes, string Sha256, string? Caption) : Deed;

/// <summary>What becomes of a part.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<PartChoice>))]
public enum PartChoice
{
    /// <summary>It goes back.</summary>
    Keep,

    /// <summary>A new one is fitted.</summary>
    Replace,

    /// <summary>It is measured again before anybody decides.</summary>
    MeasureAgain,
}
