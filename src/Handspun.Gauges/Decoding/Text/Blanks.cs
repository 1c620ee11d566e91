namespace Handspun.Gauges.Decoding.Text;

/// <summary>Blanks in a line: spaces and tabs.</summary>
internal static class Blanks
{
    /// <summary>The first place from a given one at which there is no blank.</summary>
    public static int Skip(ReadOnlySpan<byte> text, int at)
    {
        while (at < text.Length && text[at] is (byte)' ' or (byte)'\t')
        {
            at++;
        }

        return at;
    }

    /// <summary>The text without the blanks at its ends.</summary>
    public static ReadOnlySpan<byte> Trim(ReadOnlySpan<byte> text) => text.Trim(" \t"u8);
}
