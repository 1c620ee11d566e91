using Handspun.Jobs.Limits;

namespace Handspun.Jobs.Tests.Limits;

public class LimitBoundsTests
{
    [Theory]
    [InlineData(null, null, null, null)]
    [InlineData(null, "0.005 in", null, 0.127)]   // 1 in = 25.4 mm
    [InlineData("0,05 mm", null, 0.05, null)]
    [InlineData("0.05 mm", ".005\"", 0.05, 0.127)]
    public void Bounds_AsTheyAreTyped_AreReadInMillimetres(string? atLeast, string? atMost, double? lower, double? upper)
    {
        var bounds = LimitBounds.Read(("at_least", atLeast), ("at_most", atMost));

        Assert.Null(bounds.Problem);
        Assert.Equal((lower, upper), (bounds.Lower?.Millimetres, bounds.Upper is { } most ? Math.Round(most.Millimetres, 9) : (double?)null));
        Assert.Equal(lower is null && upper is null, bounds.IsEmpty);
    }

    [Theory]
    [InlineData("0.005", null, "at_least '0.005' is no length. Give the length with its unit")]
    [InlineData(null, "five mm", "at_most 'five mm' is no length")]
    [InlineData("0.2 mm", "0.005 in", "at_least does not lie below at_most: swap them")]
    [InlineData("0.127 mm", "0.127 mm", "at_least does not lie below at_most: swap them")]
    public void Bounds_ThatCannotBe_SayWhatToDo(string? atLeast, string? atMost, string sentence)
    {
        var bounds = LimitBounds.Read(("at_least", atLeast), ("at_most", atMost));

        Assert.StartsWith(sentence, bounds.Problem, StringComparison.Ordinal);
        Assert.True(bounds.IsEmpty);
    }
}
