namespace Handspun.Gauges.Hid;

/// <summary>What a key types on a keyboard of the US layout, which is what a gauge that acts as one assumes.</summary>
/// <remarks>
/// HID Usage Tables, page 0x07. A key that types nothing that can stand in a value gives a question mark, so that the
/// line that it is in is refused and not read without it.
/// </remarks>
internal static class KeyText
{
    private const byte FirstKey = 0x04;
    private const byte KeypadComma = 0x85;
    private const byte KeypadPoint = 0x63;
    private const byte Unknown = (byte)'?';

    // From 0x04 to 0x38: letters, digits, Enter, Escape, Backspace, Tab, blank and signs.
    private static ReadOnlySpan<byte> Plain => "abcdefghijklmnopqrstuvwxyz1234567890\n??\t -=[]\\?;'`,./"u8;

    private static ReadOnlySpan<byte> WithShift => "ABCDEFGHIJKLMNOPQRSTUVWXYZ!@#$%^&*()\n??\t _+{}|?:\"~<>?"u8;

    // From 0x54 to 0x63, and the same with shift: / * - + Enter 1 … 9 0 .
    private static ReadOnlySpan<byte> Keypad => "/*-+\n1234567890."u8;

    /// <summary>The character that a key types; 0 for a key that types nothing and changes no text, such as Num Lock.</summary>
    public static byte Of(byte key, KeySet down, bool decimalComma)
    {
        const byte capsLock = 0x39, scrollLock = 0x47, numLock = 0x53, keypad = 0x54;
        if (key is capsLock or scrollLock or numLock)
        {
            return 0;
        }

        if (IsCommand(down))
        {
            return Unknown;
        }

        if (key is KeypadComma or KeypadPoint)
        {
            return key == KeypadPoint || decimalComma ? (byte)'.' : (byte)',';
        }

        var row = key < keypad ? IsShifted(down) ? WithShift : Plain : Keypad;
        var place = key - (key < keypad ? FirstKey : keypad);
        var typed = place >= 0 && place < row.Length ? row[place] : Unknown;
        return !decimalComma ? typed : typed switch
        {
            (byte)',' => (byte)'.',
            (byte)'.' => Unknown,
            _ => typed,
        };
    }

    private static bool IsShifted(KeySet down) => down.Contains(0xE1) || down.Contains(0xE5);

    // Control, Alt and the system key, left and right: what they type is an order to a program.
    private static bool IsCommand(KeySet down) =>
        down.Contains(0xE0) || down.Contains(0xE2) || down.Contains(0xE3) || down.Contains(0xE4) || down.Contains(0xE6) || down.Contains(0xE7);
}
