using Handspun.Metrology.Lift;
using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Tests.Lift;

public class TopDeadCentreTests
{
    // A piston on a crank of throw r and a rod of length l is at height r cos a + √(l² − r² sin² a): the same on both sides of
    // the top, so the top is midway between the two angles of any height.
    [Theory]
    [InlineData(40)]
    [InlineData(17.5)]
    [InlineData(80)]
    public void TopDeadCentre_BetweenTheTwoAnglesOfOneHeight_IsTheirMean(double before)
    {
        const double top = 352.25;

        var found = TopDeadCentre.ByPositiveStop(At(top - before), At(top + before - 360));

        Assert.Null(found.Missing);
        Assert.Equal(top, found.Angle!.Value.Value.Degrees, 1e-9);
        Assert.Equal(Math.Sqrt(2) * 0.5 / 2, found.Angle.Value.U95.Degrees, 1e-12);
    }

    [Fact]
    public void TopDeadCentre_WhicheverStopIsNamedFirst_IsTheSame() =>
        Assert.Equal(
            TopDeadCentre.ByPositiveStop(At(30), At(320)).Angle!.Value.Value.Degrees,
            TopDeadCentre.ByPositiveStop(At(320), At(30)).Angle!.Value.Value.Degrees,
            1e-9);

    [Theory]
    [InlineData(100, 101)]
    [InlineData(0, 179)]
    public void TopDeadCentre_FromStopsThatDoNotTell_SaysWhatToDo(double one, double other)
    {
        var found = TopDeadCentre.ByPositiveStop(At(one), At(other));

        Assert.Null(found.Angle);
        Assert.EndsWith(".", found.Missing, StringComparison.Ordinal);
    }

    private static Measured<CrankAngle> At(double degrees) => new(CrankAngle.FromDegrees(degrees), CrankAngle.FromDegrees(0.5));
}
