namespace Handspun.Gauges.Tests.Journal;

/// <summary>A folder of a test's own, gone when it ends.</summary>
internal sealed class TestFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("handspun-gauges-").FullName;

    public string File(string name) => System.IO.Path.Combine(Path, name);

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
