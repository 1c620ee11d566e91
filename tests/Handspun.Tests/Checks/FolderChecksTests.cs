using Handspun.Checks;
using Handspun.Station;

namespace Handspun.Tests.Checks;

public sealed class FolderChecksTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("check-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Folder_ThatCanBeWritten_IsGood_AndLeftAsItWas()
    {
        Assert.Equal(CheckMark.Good, FolderChecks.Rights(DataFolder.LookInto(_folder)).Mark);
        Assert.Empty(Directory.EnumerateFileSystemEntries(_folder));
    }

    [Fact]
    public void Folder_ThatIsNotThereYet_IsNoFault_AndNotMade()
    {
        var data = DataFolder.LookInto(Path.Combine(_folder, "none", "yet"));

        Assert.Equal(CheckMark.Mind, FolderChecks.Rights(data).Mark);
        Assert.NotEqual("", FolderChecks.Space(data).Sentence);
        Assert.False(Directory.Exists(data.Root));
    }

    [Theory]
    [InlineData(0.1, "failing", "make room before the next job")]
    [InlineData(0.5, "mind", "make room soon")]
    [InlineData(40, "ok", "40.0 GB are free at /data.")]
    public void Space_IsJudgedByHowMuchThereIs(double gigabytes, string code, string words)
    {
        var line = FolderChecks.Space("/data", gigabytes);

        Assert.Equal(code, line.Code);
        Assert.Contains(words, line.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Folder_InWhichAStationWorks_IsTaken()
    {
        Assert.False(DataFolder.LookInto(_folder).IsTaken);
        using (DataFolder.Take(_folder))
        {
            Assert.True(DataFolder.LookInto(_folder).IsTaken);
        }

        Assert.False(DataFolder.LookInto(_folder).IsTaken);
    }
}
