using System.Runtime.CompilerServices;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Readings;
using Handspun.Gauges.Tests.Journal;

namespace Handspun.Gauges.Tests.Profiles;

public sealed class ProfileShelfTests : IDisposable
{
    private readonly TestFolder _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public void ShippedProfiles_BesideTheProgram_AreThoseOfTheSource()
    {
        Assert.Equal(new ProfileShelf(SourceFolder()).Names, new ProfileShelf(ProfileShelf.ShippedFolder).Names);
        Assert.Contains("text-line", new ProfileShelf(ProfileShelf.ShippedFolder).Names);
    }

    [Fact]
    public void ShippedProfiles_AllOfThem_Hold()
    {
        var shelf = new ProfileShelf(ProfileShelf.ShippedFolder);
        Assert.All(shelf.Names, name =>
        {
            var profile = shelf.Find(name);
            Assert.Equal(name, profile.Name);
            Assert.NotEqual(name, profile.Title);
            Assert.InRange(profile.Accuracy.ResolutionMillimetres, double.Epsilon, 0.01);
            Assert.InRange(profile.Accuracy.ErrorLimitMillimetres, profile.Accuracy.ResolutionMillimetres, 0.1);
        });
    }

    [Theory]
    [InlineData("text-line", GaugeUnit.Millimetre)]
    [InlineData("text-line-inch", GaugeUnit.Inch)]
    public void ShippedProfile_OfTextLines_IsInItsUnit(string name, GaugeUnit unit) =>
        Assert.Equal(unit, new ProfileShelf(ProfileShelf.ShippedFolder).Find(name).Value.Unit);

    [Fact]
    public void Profile_OfTheShop_GoesBeforeTheShippedOne()
    {
        File.WriteAllText(_shop.File("text-line.toml"), "title = \"ours\"");
        File.WriteAllText(_shop.File("bench.toml"), "title = \"bench\"");
        var shelf = new ProfileShelf(_shop.Path, ProfileShelf.ShippedFolder);

        Assert.Equal("ours", shelf.Find("text-line").Title);
        Assert.Equal(GaugeUnit.Inch, shelf.Find("text-line-inch").Value.Unit);
        Assert.Equal(new ProfileShelf(SourceFolder()).Names.Append("bench").Order(StringComparer.Ordinal), shelf.Names);
    }

    [Fact]
    public void Folder_ThatIsNotThere_IsPassedOver() =>
        Assert.Equal(new ProfileShelf(SourceFolder()).Names, new ProfileShelf(_shop.File("nowhere"), ProfileShelf.ShippedFolder).Names);

    [Theory]
    [InlineData("text-lime")]
    [InlineData("Text-Line")]
    [InlineData("")]
    [InlineData("../profiles/text-line")]
    public void Profile_ThatIsNotThere_IsToldWithThoseThatAre(string name)
    {
        var problem = Assert.Single(Assert.Throws<ProfileException>(() => new ProfileShelf(ProfileShelf.ShippedFolder).Find(name)).Problems);
        Assert.Contains($"'{name}'", problem, StringComparison.Ordinal);
        Assert.Contains("text-line, text-line-inch", problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Profile_OfTheShopThatDoesNotHold_IsToldByItsName()
    {
        File.WriteAllText(_shop.File("bench.toml"), "[link]\nbaud = 0");

        var refused = Assert.Throws<ProfileException>(() => new ProfileShelf(_shop.Path).Find("bench"));
        Assert.Contains("Profile 'bench', line 2: 'link.baud'", Assert.Single(refused.Problems), StringComparison.Ordinal);
    }

    private static string SourceFolder([CallerFilePath] string here = "") =>
        Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", "src", "Handspun.Gauges", "Profiles", "Shipped");
}
