namespace Handspun.Gauges.Profiles;

/// <summary>Reads the section <c>[request]</c> of a profile.</summary>
internal static class RequestReader
{
    private const int LongestWait = 60_000;

    /// <summary>Reads it.</summary>
    /// <param name="section">The section; an empty one where the profile has none.</param>
    /// <param name="own">What the frame's own protocol asks with; empty where it has no such thing. Bytes that the profile names go before it.</param>
    /// <param name="ownEvery">How often, where the profile does not say.</param>
    public static RequestSettings Read(ProfileSection section, ReadOnlyMemory<byte> own = default, TimeSpan? ownEvery = null)
    {
        var send = section.Bytes("send");
        var every = section.Whole("every_ms", 0, 1, LongestWait);
        var settings = new RequestSettings
        {
            Send = send.IsEmpty ? own : send,
            Every = every == 0 ? ownEvery : TimeSpan.FromMilliseconds(every),
            Start = section.Bytes("start"),
            Stop = section.Bytes("stop"),
        };
        if (settings is { Send.IsEmpty: true, Every: not null })
        {
            section.Complain("every_ms", "says how often 'send' goes out, and there is no 'send': name the bytes, or leave both out");
        }

        section.RefuseTheRest();
        return settings;
    }
}
