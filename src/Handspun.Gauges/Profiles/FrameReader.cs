namespace Handspun.Gauges.Profiles;

/// <summary>Reads the sections <c>[frame]</c> and <c>[flags]</c> of a profile.</summary>
internal static class FrameReader
{
    private static readonly Dictionary<string, Func<ProfileSection, ProfileSection, FrameFormat>> Kinds = new()
    {
        ["text-line"] = TextFrameReader.ReadLine,
        ["text-columns"] = TextFrameReader.ReadColumns,
        ["text-pattern"] = TextFrameReader.ReadPattern,
        ["nibbles"] = NibbleFrameReader.Read,
        ["bits"] = BitFrameReader.Read,
        ["registers"] = RegisterFrameReader.Read,
    };

    /// <summary>Reads them.</summary>
    public static FrameFormat Read(ProfileSection section, ProfileSection flags)
    {
        var format = section.Choice("kind", "text-line", Kinds)(section, flags);
        section.RefuseTheRest();
        return format;
    }
}
