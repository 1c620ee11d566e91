using System.Net;
using Handspun.Jobs.Lengths;
using Handspun.SharedFiles;
using Handspun.ShopSettings;
using Handspun.Station;

namespace Handspun.Tests.ShopSettings;

public sealed class SettingsDeskTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("settings-").FullName;

    private string File => Path.Combine(_folder, "shop.toml");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Settings_ThatAreSaved_HoldAtOnceAndAfterARestart()
    {
        var options = Options();
        var settings = new ShopFile(LengthUnit.MillimetreHundredths, TimeSpan.FromSeconds(20)) { Mechanics = ["Ada \"Sparks\" O'Hara", "דנה", "<b>Bo</b>"] };

        _ = new SettingsDesk(options).Save(settings, null);

        Assert.Equal((LengthUnit.MillimetreHundredths, TimeSpan.FromSeconds(20)), (options.Unit, options.StepAfter));
        var again = ShopFile.Read(File);
        Assert.Equal((settings.Unit, settings.StepAfter), (again.Unit, again.StepAfter));
        Assert.Equal(settings.Mechanics, again.Mechanics);
    }

    [Fact]
    public void File_KeepsWhatSomebodyWroteInIt()
    {
        const string Written = "# Ask Bo before you change this.\nunit = \"in\"   # as on the drawings\n\nstep_after_s = 12\n";
        System.IO.File.WriteAllText(File, Written);
        var desk = new SettingsDesk(Options());
        var (before, tag) = desk.Look();

        _ = desk.Save(before with { StepAfter = TimeSpan.Zero }, tag);

        Assert.Equal(Written.Replace("12", "0", StringComparison.Ordinal), System.IO.File.ReadAllText(File));
    }

    [Fact]
    public void Settings_OfTwoPeopleAtTheSameTime_TellTheSecond()
    {
        var desk = new SettingsDesk(Options());
        var (before, tag) = desk.Look();
        _ = desk.Save(before with { Mechanics = ["Ada"] }, tag);

        Assert.Throws<ChangedMeanwhileException>(() => desk.Save(before with { StepAfter = TimeSpan.Zero }, tag));

        var (there, now) = desk.Look();
        Assert.Equal("Ada", Assert.Single(there.Mechanics));
        _ = desk.Save(there with { StepAfter = TimeSpan.Zero }, now);   // who has looked may
        Assert.Equal("Ada", Assert.Single(ShopFile.Read(File).Mechanics));
    }

    [Fact]
    public void File_EditedByHandWhileTheStationRuns_IsTakenOnWhenItIsLookedAt_AndRefusedWhereItDoesNotHold()
    {
        var options = Options();
        var desk = new SettingsDesk(options);
        System.IO.File.WriteAllText(File, "unit = \"mm\"\n");
        _ = desk.Look();
        Assert.Equal(LengthUnit.Millimetre, options.Unit);

        System.IO.File.WriteAllText(File, "unit = \"cm\"\n");
        Assert.Throws<StationTroubleException>(() => desk.Look());
        Assert.Throws<StationTroubleException>(() => desk.Save(ShopFile.Usual, null));
        Assert.Equal("unit = \"cm\"\n", System.IO.File.ReadAllText(File));
        Assert.Equal(LengthUnit.Millimetre, options.Unit);
    }

    [Theory]
    [InlineData(LengthUnit.Millimetre, LengthUnit.InchThousandths, LengthUnit.Millimetre)]
    [InlineData(LengthUnit.Millimetre, LengthUnit.MillimetreHundredths, LengthUnit.MillimetreHundredths)]
    [InlineData(null, LengthUnit.InchThousandths, LengthUnit.InchThousandths)]
    public void Unit_ThatTheRunWasTold_GoesBeforeThatOfTheFile(LengthUnit? told, LengthUnit file, LengthUnit shown) =>
        Assert.Equal(shown, new ShopWays(ShopFile.Usual with { Unit = file }, told).Unit);

    [Theory]
    [InlineData("in", "2", "8", "unit")]
    [InlineData("cm", "3", "8", "unit")]
    [InlineData("in", "4", "8.5", "step_after_s")]
    [InlineData("in", "4", "8,5", "step_after_s")]
    [InlineData("in", "4", "-1", "step_after_s")]
    [InlineData("in", "4", "601", "step_after_s")]
    [InlineData("in", "4", "", "step_after_s")]
    [InlineData("in", "4", "٨", "step_after_s")]
    public void Settings_ThatCannotBe_AreRefusedByTheirField(string unit, string places, string step, string field)
    {
        Assert.Null(new TypedSettings(unit, places, step, []).Read(out var problems));
        Assert.Equal(field, Assert.Single(problems).Key);
    }

    [Theory]
    [InlineData("Ada\nada", "stands twice")]
    [InlineData("A\u0007", "letters and blanks only")]
    [InlineData("A name that is very long and goes on and on and on until nobody could write it", "too long")]
    public void Names_ThatCannotBe_AreRefused(string names, string sentence)
    {
        Assert.Null(new TypedSettings("in", "4", "8", names.Split('\n')).Read(out var problems));
        Assert.Contains(sentence, problems["mechanics"], StringComparison.Ordinal);
    }

    private StationOptions Options()
    {
        var nowhere = new IPEndPoint(IPAddress.Loopback, 0);
        return new() { Data = DataFolder.LookInto(_folder), Http = nowhere, Mqtt = nowhere, Gauges = [] };
    }
}
