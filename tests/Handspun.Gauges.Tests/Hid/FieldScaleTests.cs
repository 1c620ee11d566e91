using System.Buffers.Binary;
using CsCheck;
using Handspun.Gauges.Hid;
using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Tests.Hid;

public class FieldScaleTests
{
    private static readonly System.Text.Json.JsonElement Published = Descriptors.Published("hid-units.json");

    // "400 counts per inch", the standard's own example of resolution (6.2.2.7).
    [Fact]
    public void Scale_OfTheStandardsExample_Is400CountsAnInch()
    {
        var example = Published.GetProperty("spec_example");
        var field = Descriptors.Parsed("05 01 75 08 95 01 09 30 81 02").Fields[0] with
        {
            LogicalMinimum = example.GetProperty("logical")[0].GetInt64(),
            LogicalMaximum = example.GetProperty("logical")[1].GetInt64(),
            PhysicalMinimum = example.GetProperty("physical")[0].GetInt64(),
            PhysicalMaximum = example.GetProperty("physical")[1].GetInt64(),
            UnitExponent = example.GetProperty("unit_exponent").GetInt32(),
            Unit = HidUnit.Inch,
        };

        Assert.True(FieldScale.TryFromField(field, out var scale));
        Assert.Equal(GaugeUnit.Inch, scale.Unit);
        Assert.Equal(1 / example.GetProperty("resolution").GetDouble(), scale.Of(1) - scale.Of(0));
        Assert.Equal(-0.3175, scale.Of(-127));
    }

    [Fact]
    public void Scale_OfConstructedLengths_GivesTheirValues()
    {
        var examples = Published.GetProperty("constructed_length_examples").EnumerateArray().ToList();
        Assert.Equal(2, examples.Count);
        Assert.All(examples, example =>
        {
            var field = Descriptors.Parsed("05 01 09 30 " + example.GetProperty("items").GetString()).Fields[0];
            var counts = BinaryPrimitives.ReadInt16LittleEndian(Descriptors.Bytes(example.GetProperty("report").GetString()!));
            Assert.True(FieldScale.TryFromField(field, out var scale));
            var inch = example.TryGetProperty("value_inch", out var value);
            Assert.Equal(inch ? GaugeUnit.Inch : GaugeUnit.Millimetre, scale.Unit);
            Assert.Equal((inch ? value : example.GetProperty("value_mm")).GetDouble(), scale.Of(counts));
        });
    }

    [Fact]
    public void Scale_OfARangeThatDoesNotBeginAtZero_MovesWithIt()
    {
        // Counts 100 to 300 stand for -5 to 5 mm, in tenths of a centimetre.
        var field = Descriptors.Parsed("05 01 09 30 15 64 26 2C 01 35 FB 45 05 55 0F 65 11 75 10 95 01 81 02").Fields[0];

        Assert.True(FieldScale.TryFromField(field, out var scale));
        Assert.Equal([-5.0, 0.0, 5.0, 0.05], new[] { 100L, 200, 300, 201 }.Select(scale.Of));
    }

    [Theory]
    [InlineData("65 14 55 0E")]       // degrees
    [InlineData("65 11 55 08 55 64")] // ten to the hundredth centimetres
    [InlineData("65 00")]             // no unit
    [InlineData("65 11 15 05 25 05")] // a range of nothing
    [InlineData("65 11 15 0A 25 05")]
    [InlineData("65 11 35 05 45 05")] // counts that all stand for the same
    public void Field_ThatIsNoLength_HasNoScale(string items)
    {
        var field = Descriptors.Parsed("05 01 09 30 15 00 25 64 75 08 95 01 " + items + " 81 02").Fields[0];

        Assert.False(FieldScale.TryFromField(field, out _));
    }

    [Theory]
    [InlineData(0.001)]
    [InlineData(0.0005)]
    [InlineData(0.00005)]
    [InlineData(0.01)]
    public void Scale_OfADecimalStep_GivesTheNumberThatADisplayShows(double step) => Gen.Int[-1_000_000, 1_000_000].Sample(counts =>
        Assert.Equal((double)(counts * (decimal)step), FieldScale.FromStep(step, GaugeUnit.Millimetre).Of(counts)));

    [Fact]
    public void Scale_OfAnyStep_IsThatStep() =>
        Assert.Equal(0.003 * 7, FieldScale.FromStep(0.003, GaugeUnit.Inch).Of(7), 1e-17);
}
