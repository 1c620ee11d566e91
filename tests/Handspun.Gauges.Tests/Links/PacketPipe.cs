using System.Globalization;
using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace Handspun.Gauges.Tests.Links;

/// <summary>A pipe in packet mode, which like a HID device's node gives what was written at once in one read and never joins two.</summary>
internal sealed class PacketPipe : IDisposable
{
    private readonly SafeFileHandle _readingEnd;
    private readonly FileStream _writingEnd;

    public PacketPipe()
    {
        const int closeOnExec = 0x80000;
        var packets = RuntimeInformation.ProcessArchitecture is Architecture.Arm64 ? 0x10000 : 0x4000;
        var ends = new int[2];
        Assert.Equal(0, pipe2(ends, packets | closeOnExec));
        _readingEnd = new(ends[0], ownsHandle: true);
        _writingEnd = new(new SafeFileHandle(ends[1], ownsHandle: true), FileAccess.Write, bufferSize: 0);
        Path = string.Create(CultureInfo.InvariantCulture, $"/proc/self/fd/{ends[0]}");
    }

    /// <summary>A path by which its reading end can be opened.</summary>
    public string Path { get; }

    /// <summary>How many of this process's open files are this pipe.</summary>
    public int Opened => OpenFiles.Count(File.ResolveLinkTarget(Path, returnFinalTarget: false)!.Name);

    public void Send(params ReadOnlySpan<byte> report) => _writingEnd.Write(report);

    public void Dispose()
    {
        _readingEnd.Dispose();
        _writingEnd.Dispose();
    }

    [DllImport("libc", SetLastError = true)]
    private static extern int pipe2([Out] int[] ends, int flags);
}

/// <summary>What this process has open.</summary>
internal static class OpenFiles
{
    /// <summary>How many open files are of that name.</summary>
    public static int Count(string name) => new DirectoryInfo("/proc/self/fd").EnumerateFileSystemInfos().Count(entry => entry.LinkTarget == name);

    /// <summary>How many threads are of that name.</summary>
    public static int Threads(string name) => Directory.EnumerateDirectories("/proc/self/task").Count(task => NameOf(task) == name);

    private static string NameOf(string task)
    {
        try
        {
            return File.ReadAllText(Path.Combine(task, "comm")).Trim();
        }
        catch (IOException)
        {
            return "";   // it ended meanwhile
        }
    }
}
