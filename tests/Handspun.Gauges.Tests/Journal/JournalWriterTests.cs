using Handspun.Gauges.Journal;

namespace Handspun.Gauges.Tests.Journal;

public sealed class JournalWriterTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Journal_WhileItIsWritten_CanBeRead()
    {
        var path = _folder.File("journal.jsonl");
        using var writer = JournalWriter.Create(path, Journals.Header);
        writer.Append(1, "+0.1\n");
        Assert.Single(Journals.Entries(path));

        writer.Append(2, "+0.2\n");
        Assert.Equal(2, Journals.Entries(path).Count);
        Assert.Equal(new FileInfo(path).Length, writer.Length);
    }

    [Fact]
    public void Head_WithWhatTheCaptureWasToFind_KeepsItAsItWasGiven()
    {
        const string task = """{"kind":"bore","wanted":6,"setup":{"kind":"bore","setting_mm":21.4}}""";
        var path = _folder.File("journal.jsonl");

        JournalWriter.Create(path, Journals.Header with { Task = task }).Dispose();

        Assert.Equal(task, JournalReader.HeadOf(path).Task);
        Assert.Contains($"\"task\":{task}", File.ReadAllText(path), StringComparison.Ordinal);   // an object, not a text in quotes
    }

    [Fact]
    public void File_ThatIsThereAlready_IsNotOverwritten()
    {
        var path = _folder.File("journal.jsonl");
        File.WriteAllText(path, "kept");

        Assert.Throws<IOException>(() => JournalWriter.Create(path, Journals.Header));
        Assert.Equal("kept", File.ReadAllText(path));
    }

    [Fact]
    public void Writer_DisposedTwice_OrSyncedWithNothingNew_IsFine()
    {
        var path = _folder.File("journal.jsonl");
        var writer = JournalWriter.Create(path, Journals.Header);
        writer.Append(1, "+0.1\n");
        writer.Sync();
        writer.Sync();
        writer.Dispose();
        writer.Dispose();

        Assert.Single(Journals.Entries(path));
    }
}
