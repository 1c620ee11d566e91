using Handspun.Metrology.Runout;
using Handspun.Pictures.Runout;

namespace Handspun.Pictures.Tests.Runout;

public sealed class HeightScaleTests
{
    [Fact]
    public void Scales_OfTwoRecordsSideBySide_AreOneAndTheSame()
    {
        var small = new InventedRecord { Harmonics = [new(-0.004, 0.002)], NoiseMillimetres = 0.0002 }.Content();
        var large = new InventedRecord { Harmonics = [new(-0.04, 0.02)], Limit = null, Verdict = null }.Content();
        var (a, b) = (Scale(small), Scale(large));

        var (first, second) = (a.Beside(b), b.Beside(a));

        Assert.Equal((first.Low, first.High, first.HighestMarked), (second.Low, second.High, second.HighestMarked));
        Assert.True(first.High > a.High);
        Assert.Equal(a.Runout, first.Runout);   // what is drawn stays its own
        Assert.NotNull(first.Limit);
    }

    [Fact]
    public void Pictures_SideBySide_AreRefusedWhereOneHasNoRunout()
    {
        var whole = new InventedRecord().Content();
        var none = whole with { Result = whole.Result with { Status = RunoutStatus.Rejected } };

        Assert.Throws<ArgumentException>(() => RunoutPicture.DrawTogether(whole, none));
        var (first, second) = RunoutPicture.DrawTogether(whole, whole);
        Assert.Equal(first.ToSvg(), second.ToSvg());
    }

    private static HeightScale Scale(RunoutPictureContent content) => HeightScale.Of(content, TurnedProfile.Of(content));
}
