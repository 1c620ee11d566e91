namespace Handspun.Gauges.Tests.Listening;

/// <summary>What this process holds, by the Linux kernel's count (proc_pid_fd, proc_pid_task) and the garbage collector's.</summary>
internal sealed record Holdings(int Handles, int Threads, long Bytes)
{
    public static Holdings Now()
    {
        GC.Collect();
        GC.WaitForPendingFinalizers();
        return new(
            Directory.EnumerateFileSystemEntries("/proc/self/fd").Count(),
            Directory.EnumerateFileSystemEntries("/proc/self/task").Count(),
            GC.GetTotalMemory(forceFullCollection: true));
    }
}
