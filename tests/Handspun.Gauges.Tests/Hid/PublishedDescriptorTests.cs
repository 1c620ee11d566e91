using System.Text.Json;
using Handspun.Gauges.Hid;

namespace Handspun.Gauges.Tests.Hid;

// Against the appendices of USB HID 1.11 (hid-descriptors.json says which).
public class PublishedDescriptorTests
{
    private static readonly JsonElement Published = Descriptors.Published("hid-descriptors.json");

    [Theory]
    [InlineData("boot_keyboard")]
    [InlineData("keyboard_101")]
    [InlineData("boot_mouse")]
    public void Descriptor_OfAnAppendix_HasItsItemsAndReports(string name)
    {
        var expected = Published.GetProperty(name);
        var hex = expected.GetProperty("bytes").GetString()!;
        var descriptor = Descriptors.Parsed(hex);

        Assert.Equal(expected.GetProperty("length").GetInt32(), Descriptors.Bytes(hex).Length);
        Assert.Equal(expected.GetProperty("items").GetInt32(), descriptor.Items);
        Assert.Equal(expected.GetProperty("input_bits").GetInt32(), descriptor.BitsOf(ReportKind.Input, 0));
        Assert.Equal(expected.GetProperty("output_bits").GetInt32(), descriptor.BitsOf(ReportKind.Output, 0));
        Assert.Equal(expected.GetProperty("input_bits").GetInt32() / 8, descriptor.LongestInputBytes);
        Assert.False(descriptor.NumbersReports);
    }

    [Theory]
    [InlineData("boot_keyboard", 255)]
    [InlineData("keyboard_101", 101)]
    public void Keyboard_OfAnAppendix_HasModifiersLampsAndSixKeys(string name, int last)
    {
        var descriptor = Descriptors.Parsed(Published.GetProperty(name).GetProperty("bytes").GetString()!);
        Assert.All(descriptor.Fields, field => Assert.Equal(new HidUsage(1, 6), field.Application));

        var modifiers = descriptor.Fields.Take(8).ToList();
        Assert.Equal(Enumerable.Range(0xE0, 8).Select(id => new HidUsage(7, (ushort)id)), modifiers.Select(field => field.Usage));
        Assert.Equal(Enumerable.Range(0, 8), modifiers.Select(field => field.BitOffset));
        Assert.All(modifiers, field => Assert.Equal((ReportKind.Input, 1, 0L, 1L, false), (field.Kind, field.BitSize, field.LogicalMinimum, field.LogicalMaximum, field.IsArray)));

        var lamps = descriptor.Fields.Where(field => field.Kind == ReportKind.Output).ToList();
        Assert.Equal(Enumerable.Range(1, 5).Select(id => new HidUsage(8, (ushort)id)), lamps.Select(field => field.Usage));

        var keys = descriptor.Fields[^1];
        Assert.Equal((ReportKind.Input, true, 6, 8, 16), (keys.Kind, keys.IsArray, keys.Count, keys.BitSize, keys.BitOffset));
        Assert.Equal((0L, (long)last), (keys.LogicalMinimum, keys.LogicalMaximum));
        Assert.Equal([new HidUsageRange(new(7, 0), (ushort)last)], keys.Usages);
        Assert.False(keys.IsSigned);
        Assert.Equal(14, descriptor.Fields.Count);
    }

    [Fact]
    public void Mouse_OfAnAppendix_HasThreeButtonsAndTwoSignedChanges()
    {
        var descriptor = Descriptors.Parsed(Published.GetProperty("boot_mouse").GetProperty("bytes").GetString()!);

        Assert.Equal(
            [new HidUsage(9, 1), new HidUsage(9, 2), new HidUsage(9, 3), new HidUsage(1, 0x30), new HidUsage(1, 0x31)],
            descriptor.Fields.Select(field => field.Usage));
        Assert.Equal([0, 1, 2, 8, 16], descriptor.Fields.Select(field => field.BitOffset));
        Assert.Equal([false, false, false, true, true], descriptor.Fields.Select(field => field.IsRelative));
        Assert.Equal([false, false, false, true, true], descriptor.Fields.Select(field => field.IsSigned));
        Assert.Equal((-127L, 127L, -127L, 127L), (descriptor.Fields[3].LogicalMinimum, descriptor.Fields[3].LogicalMaximum, descriptor.Fields[3].PhysicalMinimum, descriptor.Fields[3].PhysicalMaximum));
        Assert.All(descriptor.Fields, field => Assert.Equal(new HidUsage(1, 2), field.Application));
    }
}
