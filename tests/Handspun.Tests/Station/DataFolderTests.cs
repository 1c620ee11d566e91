using Handspun.Jobs.Lengths;
using Handspun.Station;

namespace Handspun.Tests.Station;

public sealed class DataFolderTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("data-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Take_OfANewFolder_MakesItAndHoldsItAlone()
    {
        var root = Path.Combine(_folder, "new", "deeper");

        using (DataFolder.Take(root))
        {
            Assert.Contains("Another station works in", Assert.Throws<StationTroubleException>(() => DataFolder.Take(root)).Message, StringComparison.Ordinal);
        }

        using var again = DataFolder.Take(root);
        Assert.True(Directory.Exists(again.Records));
    }

    [Fact]
    public void Take_BelowAFile_SaysWhatToDo()
    {
        var file = Path.Combine(_folder, "file");
        File.WriteAllText(file, "");

        Assert.Contains("--data", Assert.Throws<StationTroubleException>(() => DataFolder.Take(Path.Combine(file, "data"))).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("unit = \"mm\"\n", LengthUnit.Millimetre)]
    [InlineData("unit = \"in\"\n", LengthUnit.Inch)]
    [InlineData("", LengthUnit.Inch)]
    [InlineData("places = 3\n", LengthUnit.InchThousandths)]
    [InlineData("unit = \"mm\"\nplaces = 2\nmechanics = [\"Ada\"]\n", LengthUnit.MillimetreHundredths)]
    public void ShopFile_ThatHolds_GivesTheUnit(string text, LengthUnit unit)
    {
        var file = Path.Combine(_folder, "shop.toml");
        File.WriteAllText(file, text);

        Assert.Equal(unit, ShopFile.Read(file).Unit);
    }

    [Theory]
    [InlineData("", 8)]   // our own choice
    [InlineData("step_after_s = 20\n", 20)]
    [InlineData("unit = \"mm\"\nstep_after_s = 0\n", 0)]
    public void ShopFile_ThatHolds_GivesTheTimeToTheNextPoint(string text, int seconds)
    {
        var file = Path.Combine(_folder, "shop.toml");
        File.WriteAllText(file, text);

        Assert.Equal(TimeSpan.FromSeconds(seconds), ShopFile.Read(file).StepAfter);
    }

    [Theory]
    [InlineData("step_after_s = -1\n")]
    [InlineData("step_after_s = \"soon\"\n")]
    [InlineData("step_after_s = 601\n")]
    [InlineData("unit = \"cm\"\n")]
    [InlineData("units = \"mm\"\n")]
    [InlineData("unit = mm\n")]
    [InlineData("unit = \"mm\"\nplaces = 4\n")]
    [InlineData("places = \"3\"\n")]
    [InlineData("mechanics = \"Ada\"\n")]
    [InlineData("mechanics = [\" \"]\n")]
    public void ShopFile_ThatDoesNotHold_SaysWhatItTakes(string text)
    {
        var file = Path.Combine(_folder, "shop.toml");
        File.WriteAllText(file, text);

        Assert.Contains("unit = \"in\" or unit = \"mm\"", Assert.Throws<StationTroubleException>(() => ShopFile.Read(file)).Message, StringComparison.Ordinal);
    }
}
