using Handspun.Gauges.Hid;

namespace Handspun.Gauges.Tests.Hid;

public class KeyboardReportTests
{
    [Theory]
    [InlineData("boot_keyboard")]
    [InlineData("keyboard_101")]
    public void Keyboard_OfAnAppendix_IsTheBootReport(string name)
    {
        Assert.True(KeyboardReport.TryFind(Descriptors.Parsed(Descriptors.Published("hid-descriptors.json").GetProperty(name).GetProperty("bytes").GetString()!), out var found));
        foreach (var report in new[] { Typing.Report(0), Typing.Report(0xFF), Typing.Report(Typing.LeftShift, 0x1E, 0x63, 0x04, 0, 0x65, 0x1E), Typing.Report(0, 1, 1, 1, 1, 1, 1) })
        {
            Assert.Equal(Down(KeyboardReport.Boot, report), Down(found, report));
        }

        Assert.Equal([0xE1, 0x1E, 0x04], Down(found, Typing.Report(Typing.LeftShift, 0x1E, 0x04))!);
    }

    [Fact]
    public void Keyboard_WithABitForEachKey_TellsThemInTheirOrder()
    {
        var descriptor = Descriptors.Parsed("05 01 09 06 A1 01 85 05 05 07 15 00 25 01 75 01 95 08 19 E0 29 E7 81 02 95 68 19 00 29 67 81 02 C0");
        Assert.True(KeyboardReport.TryFind(descriptor, out var found));
        var report = new byte[descriptor.LongestInputBytes];
        (report[0], report[1]) = (5, 0x20);
        foreach (var key in new[] { 0x63, 0x1E, 0x28 })
        {
            report[2 + key / 8] |= (byte)(1 << (key % 8));
        }

        Assert.Equal([0xE5, 0x1E, 0x28, 0x63], Down(found, report)!);
        report[0] = 4;
        Assert.Null(Down(found, report));   // another report of the same device
    }

    [Fact]
    public void Keyboard_WhoseSlotsCountFromAnotherKey_NamesTheRightOnes()
    {
        Assert.True(KeyboardReport.TryFind(Descriptors.Parsed("05 07 19 1E 29 27 19 54 29 63 15 01 25 1B 75 08 95 02 81 00"), out var found));

        Assert.Equal([0x1E, 0x54], Down(found, [1, 11])!);
        Assert.Equal([0x27], Down(found, [10, 0])!);
        Assert.Empty(Down(found, [0, 200])!);
    }

    [Fact]
    public void Device_WithoutKeys_IsNoKeyboard()
    {
        Assert.False(KeyboardReport.TryFind(Descriptors.Parsed(Descriptors.Gauge), out _));
        Assert.False(new HidKeyboardFormat().Suits(Descriptors.Parsed("05 07 19 E0 29 E7 15 00 25 01 75 01 95 08 81 02")));   // modifiers only
    }

    [Fact]
    public void Report_ThatIsTooShort_HasTheKeysThatAreInIt()
    {
        Assert.Equal([0x1E], Down(KeyboardReport.Boot, [0, 0, 0x1E])!);
        Assert.Empty(Down(KeyboardReport.Boot, [0])!);
        Assert.Null(Down(KeyboardReport.Boot, []));
    }

    // Modifiers first, then the others in the report's order.
    private static int[]? Down(KeyboardReport keyboard, byte[] report)
    {
        var (down, order) = (new KeySet(), new byte[256]);
        var count = keyboard.Read(report, ref down, order);
        return count < 0 ? null : [.. Enumerable.Range(0xE0, 8).Where(key => down.Contains((byte)key)), .. order[..count]];
    }
}
