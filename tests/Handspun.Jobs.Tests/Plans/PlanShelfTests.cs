using Handspun.Jobs.Plans;

namespace Handspun.Jobs.Tests.Plans;

public sealed class PlanShelfTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("handspun-plans-").FullName;

    private PlanShelf Shelf => new(_folder, PlanShelf.ShippedFolder);

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Shop_PutsItsOwnPlanInPlaceOfAShippedOne()
    {
        Write("cam-job", "title = \"Our cam job\"\n[[step]]\ncode = \"a\"\nkind = \"check\"\ntitle = \"A\"\n");

        Assert.Equal("Our cam job", Shelf.Find("cam-job").Title);
        Assert.Equal("Bottom-end inspection", Shelf.Find("bottom-end").Title);
    }

    [Fact]
    public void Plan_ThatDoesNotHold_LeavesTheOthersThere()
    {
        Write("broken", "title = ");

        var (plans, problems) = Shelf.All();

        Assert.Equal(["bottom-end", "cam-job", "quick-runout"], plans.Select(plan => plan.Code));
        Assert.Contains("Plan 'broken' is not TOML", Assert.Single(problems), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("no-such")]
    [InlineData("../plans/cam-job")]
    [InlineData("/etc/passwd")]
    public void Plan_ThatIsNotThere_IsNamedWithThoseThatAre(string code)
    {
        var refusal = Assert.Throws<PlanException>(() => Shelf.Find(code));

        Assert.Contains("use one of bottom-end, cam-job, quick-runout", Assert.Single(refusal.Problems), StringComparison.Ordinal);
    }

    private void Write(string code, string toml) => File.WriteAllText(Path.Combine(_folder, code + ".toml"), toml);
}
