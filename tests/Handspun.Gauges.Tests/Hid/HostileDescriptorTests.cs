using CsCheck;
using Handspun.Gauges.Hid;

namespace Handspun.Gauges.Tests.Hid;

public class HostileDescriptorTests
{
    [Theory]
    [InlineData("05", DescriptorFaultKind.Truncated, 0)]
    [InlineData("05 01 26 FF", DescriptorFaultKind.Truncated, 2)]
    [InlineData("05 01 27 FF FF FF", DescriptorFaultKind.Truncated, 2)]
    [InlineData("FE", DescriptorFaultKind.Truncated, 0)]
    [InlineData("FE 02", DescriptorFaultKind.Truncated, 0)]
    [InlineData("FE 02 10 AA", DescriptorFaultKind.Truncated, 0)]
    [InlineData("C0", DescriptorFaultKind.UnbalancedCollection, 0)]
    [InlineData("A1 01 A1 00 C0", DescriptorFaultKind.UnbalancedCollection, 5)]
    [InlineData("A4 B4 B4", DescriptorFaultKind.UnbalancedPop, 2)]
    [InlineData("85 00", DescriptorFaultKind.BadReportId, 0)]
    [InlineData("86 00 01", DescriptorFaultKind.BadReportId, 0)]
    [InlineData("77 FF FF FF FF 97 FF FF FF FF 81 02", DescriptorFaultKind.TooLarge, 10)]
    [InlineData("75 01 96 01 20 81 02", DescriptorFaultKind.TooLarge, 5)]
    [InlineData("75 08 96 00 40 81 01 95 01 81 01", DescriptorFaultKind.TooLarge, 9)]
    public void Descriptor_ThatIsWrong_IsToldWithItsPlace(string hex, DescriptorFaultKind kind, int position)
    {
        var fault = Descriptors.FaultOf(hex);

        Assert.Equal(new DescriptorFault(kind, position), fault);
        Assert.EndsWith("at byte " + position, fault.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0xA4)]
    [InlineData(0xA0)]
    public void Descriptor_ThatOnlyNests_IsTooLarge(byte item)
    {
        var bytes = new byte[4096];
        Array.Fill(bytes, item);

        Assert.False(ReportDescriptor.TryParse(bytes, out _, out var fault));
        Assert.Equal(new DescriptorFault(DescriptorFaultKind.TooLarge, 64), fault);
    }

    [Fact]
    public void Descriptor_LongerThanAnyDevices_IsNotEvenRead()
    {
        Assert.False(ReportDescriptor.TryParse(new byte[65536], out _, out var fault));
        Assert.Equal(DescriptorFaultKind.TooLarge, fault.Kind);
    }

    [Fact]
    public void Bytes_OfAnyKind_AreADescriptorOrAFault_WithinBounds() => Gen.Byte.Array[0, 300].Sample(Check);

    // Random bytes are soon out of step; a good descriptor with a few bytes changed gets further.
    [Fact]
    public void Descriptor_WithAnyBytesChanged_IsADescriptorOrAFault_WithinBounds() => Gen.Select(
        Gen.OneOf(Descriptors.Published("hid-descriptors.json").EnumerateObject().Where(entry => entry.Value.ValueKind == System.Text.Json.JsonValueKind.Object)
            .Select(entry => entry.Value.GetProperty("bytes").GetString()!).Append(Descriptors.Gauge).Select(Gen.Const).ToArray()),
        Gen.Select(Gen.Int[0, 200], Gen.Byte).Array[1, 6])
        .Sample((hex, changes) =>
        {
            var bytes = Descriptors.Bytes(hex);
            foreach (var (place, value) in changes)
            {
                bytes[place % bytes.Length] = value;
            }

            Check(bytes);
        });

    private static void Check(byte[] bytes)
    {
        var good = ReportDescriptor.TryParse(bytes, out var descriptor, out var fault);
        Assert.Equal(good, fault.Kind == DescriptorFaultKind.None);
        Assert.InRange(fault.Position, 0, bytes.Length);
        Assert.InRange(descriptor.Fields.Count, 0, 8192);
        Assert.All(descriptor.Fields, field =>
        {
            Assert.InRange(field.BitSize, 1, 32);
            Assert.InRange(field.BitOffset + (long)field.BitSize * field.Count, 1, descriptor.BitsOf(field.Kind, field.ReportId));
            Assert.True(!FieldScale.TryFromField(field, out var scale) || double.IsFinite(scale.Of(field.LogicalMaximum)));
        });
    }
}
