namespace Handspun.Gauges.Tests.Hid;

/// <summary>Types as a keyboard does, in reports of the boot form: modifiers, a byte of nothing, six keys (USB HID 1.11, appendix B.1).</summary>
internal static class Typing
{
    public const byte LeftShift = 0x02;
    public const byte RightShift = 0x20;
    public const byte Enter = 0x28;

    public static byte[] Report(byte modifiers, params ReadOnlySpan<byte> keys)
    {
        var report = new byte[8];
        report[0] = modifiers;
        keys.CopyTo(report.AsSpan(2));
        return report;
    }

    /// <summary>Each key pressed and released before the next.</summary>
    public static IEnumerable<byte[]> Of(string text) => text.SelectMany(letter => new[] { KeyOf(letter), Report(0) });

    private static byte[] KeyOf(char letter) => letter switch
    {
        >= '1' and <= '9' => Report(0, (byte)(0x1E + letter - '1')),
        '0' => Report(0, 0x27),
        >= 'a' and <= 'z' => Report(0, (byte)(0x04 + letter - 'a')),
        '+' => Report(LeftShift, 0x2E),
        '-' => Report(0, 0x2D),
        '.' => Report(0, 0x37),
        ',' => Report(0, 0x36),
        ' ' => Report(0, 0x2C),
        '\n' => Report(0, Enter),
        _ => throw new ArgumentOutOfRangeException(nameof(letter), letter, "No key types it."),
    };
}
