using Handspun.Gauges.Hid;

namespace Handspun.Gauges.Tests.Hid;

public class DescriptorItemTests
{
    [Fact]
    public void LongItem_OfAnyTag_IsPassedOver()
    {
        var descriptor = Descriptors.Parsed("FE 03 10 AA BB CC 05 01 75 08 95 01 09 30 81 02 FE 00 00");

        Assert.Equal(new HidUsage(1, 0x30), Assert.Single(descriptor.Fields).Usage);
        Assert.Equal(7, descriptor.Items);
    }

    [Fact]
    public void Pop_AfterAPush_BringsBackEveryGlobalItem()
    {
        var descriptor = Descriptors.Parsed(
            "05 01 15 80 25 7F 35 F6 45 0A 55 0E 65 13 75 08 95 01 85 02 A4 " +
            "05 09 15 00 25 01 35 00 45 00 55 00 65 00 75 01 95 08 85 03 09 01 81 02 " +
            "B4 09 30 81 02");

        var field = descriptor.Fields[^1];
        Assert.Equal(new HidUsage(1, 0x30), field.Usage);
        Assert.Equal((-128L, 127L, -10L, 10L, -2, 8, 1, 2), (field.LogicalMinimum, field.LogicalMaximum, field.PhysicalMinimum, field.PhysicalMaximum,
            field.UnitExponent, field.BitSize, field.Count, field.ReportId));
        Assert.Equal(HidUnit.Inch, field.Unit);
    }

    [Fact]
    public void Usages_FewerThanValues_TheLastStandsForTheRest() => Assert.Equal(
        [0x30, 0x31, 0x31, 0x31],
        Descriptors.Parsed("05 01 75 08 95 04 09 30 09 31 81 02").Fields.Select(field => (int)field.Usage.Id));

    [Fact]
    public void Usages_OfRangesAndSingles_AreTakenInTheirOrder() => Assert.Equal(
        [5, 1, 2, 3, 9],
        Descriptors.Parsed("05 09 75 01 95 05 09 05 19 01 29 03 09 09 81 02").Fields.Select(field => (int)field.Usage.Id));

    [Fact]
    public void Usages_HoldForOneMainItemOnly() =>
        Assert.Equal(default, Descriptors.Parsed("05 01 75 08 95 01 09 30 81 02 81 02").Fields[1].Usage);

    [Fact]
    public void Usage_OfFourBytes_NamesItsPageItself() => Assert.Equal(
        [new HidUsage(0xFF00, 2), new HidUsage(1, 0x30)],
        Descriptors.Parsed("05 01 75 08 95 02 0B 02 00 00 FF 09 30 81 02").Fields.Select(field => field.Usage));

    // The page that was named last before the main item completes the usages (USB HID 1.11, section 6.2.2.8, from memory).
    [Fact]
    public void UsagePage_AfterItsUsage_CompletesIt() =>
        Assert.Equal(new HidUsage(9, 1), Assert.Single(Descriptors.Parsed("05 01 75 08 95 01 09 01 05 09 81 02").Fields).Usage);

    [Fact]
    public void Usages_BetweenDelimiters_AreAlternatives_OfWhichTheFirstCounts() => Assert.Equal(
        [0x30, 0x32],
        Descriptors.Parsed("05 01 75 08 95 02 A9 01 09 30 09 31 A9 00 09 32 81 02").Fields.Select(field => (int)field.Usage.Id));

    [Fact]
    public void Reports_WithNumbers_AreLaidOutEachForItself()
    {
        var descriptor = Descriptors.Parsed("05 01 75 08 95 01 85 01 09 30 81 02 85 02 09 31 81 02 85 01 09 32 81 02");

        Assert.Equal([(1, 0), (2, 0), (1, 8)], descriptor.Fields.Select(field => ((int)field.ReportId, field.BitOffset)));
        Assert.True(descriptor.NumbersReports);
        Assert.Equal((3, 2, 0), (descriptor.BytesOf(ReportKind.Input, 1), descriptor.BytesOf(ReportKind.Input, 2), descriptor.BytesOf(ReportKind.Input, 3)));
        Assert.Equal(3, descriptor.LongestInputBytes);
    }

    [Theory]
    [InlineData("15 00 25 FF", 0, 255)]              // by the letter of the standard -1, which no device means
    [InlineData("15 00 26 FF FF", 0, 65535)]
    [InlineData("15 00 27 FF FF FF FF", 0, 4294967295)]
    [InlineData("25 FF 15 00", 0, 255)]              // in either order
    [InlineData("15 80 25 7F", -128, 127)]
    [InlineData("15 81 25 FF", -127, -1)]
    [InlineData("16 00 80 26 FF 7F", -32768, 32767)]
    [InlineData("17 00 00 00 80 27 FF FF FF 7F", -2147483648, 2147483647)]
    [InlineData("14 25 0A", 0, 10)]                  // no data is 0
    public void Extents_AreSignedByTheirSize_WhereTheSmallestIsBelowZero(string items, long least, long most)
    {
        var field = Assert.Single(Descriptors.Parsed("05 01 75 20 95 01 09 30 " + items + " 81 02").Fields);

        Assert.Equal((least, most), (field.LogicalMinimum, field.LogicalMaximum));
        Assert.Equal((least, most), (field.PhysicalMinimum, field.PhysicalMaximum));   // undefined, so the same
        Assert.Equal(least < 0, field.IsSigned);
    }

    [Fact]
    public void PhysicalExtents_BothZero_AreTheLogicalOnes()
    {
        var field = Assert.Single(Descriptors.Parsed("05 01 75 08 95 01 09 30 15 00 25 64 35 05 45 0A 35 00 45 00 81 02").Fields);

        Assert.Equal((0L, 100L), (field.PhysicalMinimum, field.PhysicalMaximum));
    }

    [Fact]
    public void Padding_IsNoField_AndTakesItsRoom()
    {
        var descriptor = Descriptors.Parsed("05 01 75 03 95 01 81 03 75 05 09 30 81 02 75 40 95 02 81 02");

        Assert.Equal(3, Assert.Single(descriptor.Fields).BitOffset);   // wider than 32 bits is no field either
        Assert.Equal(8 + 128, descriptor.BitsOf(ReportKind.Input, 0));
    }

    [Fact]
    public void Array_NamesItsUsagesByTheirPlace()
    {
        var field = Assert.Single(Descriptors.Parsed("05 09 75 08 95 02 19 03 29 05 0B 01 00 07 00 15 01 25 04 81 00").Fields);

        Assert.True(field.IsArray);
        Assert.Equal(2, field.Count);
        Assert.Equal([0L, 2L, 3L, -1L], new[] { new HidUsage(9, 3), new(9, 5), new(7, 1), new(9, 6) }.Select(field.PlaceOf));
    }

    [Fact]
    public void Field_WithinCollections_KnowsTheApplicationAroundIt() => Assert.Equal(
        [new HidUsage(1, 2), new HidUsage(0xFF00, 1)],
        Descriptors.Parsed("05 01 75 08 95 01 09 02 A1 01 09 01 A1 00 09 30 81 02 C0 C0 06 00 FF 09 01 A1 01 09 02 81 02 C0").Fields.Select(field => field.Application));
}
