using System.Globalization;
using Handspun.Gauges.Hid;
using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Tests.Hid;

// Against the tables of USB HID 1.11, section 6.2.2.7 (hid-units.json).
public class HidUnitTests
{
    private static readonly System.Text.Json.JsonElement Published = Descriptors.Published("hid-units.json");

    [Fact]
    public void Exponent_OfEachNibble_IsThatOfTheTable()
    {
        var table = Published.GetProperty("exponent_nibble").EnumerateObject().ToList();
        Assert.Equal(16, table.Count);
        Assert.All(table, row => Assert.Equal(row.Value.GetInt32(), HidUnit.ExponentOf(int.Parse(row.Name, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture))));
    }

    // Many devices write -2 as the byte FE instead of the nibble 0E.
    [Theory]
    [InlineData("55 0E")]
    [InlineData("55 FE")]
    [InlineData("56 FE FF")]
    public void Exponent_AsANibbleOrASignedNumber_IsTheSame(string item) =>
        Assert.Equal(-2, Assert.Single(Descriptors.Parsed("75 08 95 01 " + item + " 81 02").Fields).UnitExponent);

    [Fact]
    public void Unit_OfEachPublishedCode_HasItsPowers()
    {
        // System, then powers of length or angle, mass, time, temperature, current, luminous intensity, by dimension.
        var powers = new Dictionary<string, int[]>
        {
            ["cm"] = [1, 1, 0, 0, 0, 0, 0],
            ["inch"] = [3, 1, 0, 0, 0, 0, 0],
            ["radian"] = [2, 1, 0, 0, 0, 0, 0],
            ["degree"] = [4, 1, 0, 0, 0, 0, 0],
            ["inch^2"] = [3, 2, 0, 0, 0, 0, 0],
            ["gram"] = [1, 0, 1, 0, 0, 0, 0],
            ["second"] = [1, 0, 0, 1, 0, 0, 0],
            ["cm/s"] = [1, 1, 0, -1, 0, 0, 0],
            ["momentum g cm/s"] = [1, 1, 1, -1, 0, 0, 0],
            ["cm/s^2"] = [1, 1, 0, -2, 0, 0, 0],
            ["force, dyne"] = [1, 1, 1, -2, 0, 0, 0],
            ["energy, erg"] = [1, 2, 1, -2, 0, 0, 0],
            ["rad/s^2"] = [2, 1, 0, -2, 0, 0, 0],
            ["voltage (with exponent 7 to volt)"] = [1, 2, 1, -3, 0, -1, 0],
        };
        var codes = Published.GetProperty("unit_codes").EnumerateArray().ToDictionary(
            row => row.GetProperty("meaning").GetString()!,
            row => new HidUnit(uint.Parse(row.GetProperty("code").GetString()![2..], NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture)));

        Assert.Contains("cm", codes.Keys);
        Assert.Contains("inch", codes.Keys);
        Assert.All(codes, code => Assert.Equal(powers[code.Key], Enumerable.Range(1, 6).Select(code.Value.Power).Prepend(code.Value.System)));
        Assert.All(codes, code => Assert.Equal(code.Key is "cm" or "inch", code.Value.TryGetLength(out _, out _)));
    }

    [Fact]
    public void Length_OfBothSystems_IsKnownToTheMillimetre()
    {
        Assert.True(HidUnit.Centimetre.TryGetLength(out var unit, out var tens));
        Assert.Equal((GaugeUnit.Millimetre, 1), (unit, tens));
        Assert.True(HidUnit.Inch.TryGetLength(out unit, out tens));
        Assert.Equal((GaugeUnit.Inch, 0), (unit, tens));
    }
}
