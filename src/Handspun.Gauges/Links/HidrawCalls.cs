using System.Runtime.InteropServices;
using Handspun.Gauges.Hid;
using Microsoft.Win32.SafeHandles;

namespace Handspun.Gauges.Links;

/// <summary>The calls of the Linux C library by which a HID device's node is read.</summary>
/// <remarks>A device node that is read through a file stream does not give up when it is told to; polling it beside a wake-up does.</remarks>
internal static partial class HidrawCalls
{
    public const short Readable = 0x1;
    public const int NotPermitted = 1;
    public const int NoEntry = 2;
    public const int Interrupted = 4;
    public const int NoSuchAddress = 6;
    public const int TryAgain = 11;
    public const int AccessDenied = 13;
    public const int Busy = 16;
    public const int NoDevice = 19;

    private const int ReadOnly = 0;
    private const int ReadWrite = 2;
    private const int NoTerminal = 0x100;
    private const int NonBlocking = 0x800;
    private const int CloseOnExec = 0x80000;
    private const int MayWrite = 2;
    private const int MayRead = 4;

    /// <summary>Opens a node to read and write, or to read only where no more is allowed.</summary>
    /// <returns>An invalid handle and the error number where it does not open.</returns>
    public static SafeFileHandle Open(string node, out int error)
    {
        var device = open(node, ReadWrite | NonBlocking | NoTerminal | CloseOnExec);
        error = Marshal.GetLastPInvokeError();
        if (device < 0 && error is AccessDenied or NotPermitted)
        {
            device = open(node, ReadOnly | NonBlocking | NoTerminal | CloseOnExec);
            error = Marshal.GetLastPInvokeError();
        }

        return new(device, ownsHandle: true);
    }

    /// <summary>A descriptor that becomes readable once it is signalled.</summary>
    public static SafeFileHandle NewSignal() => new(eventfd(0, NonBlocking | CloseOnExec), ownsHandle: true);

    /// <summary>Signals.</summary>
    public static void Signal(SafeFileHandle signal)
    {
        ReadOnlySpan<byte> one = [1, 0, 0, 0, 0, 0, 0, 0];
        _ = write(signal, one, (nuint)one.Length);
    }

    /// <summary>Waits until one of the descriptors has something.</summary>
    /// <param name="watched">The descriptors.</param>
    /// <param name="milliseconds">How long; below 0 for as long as it takes.</param>
    public static int Poll(Span<PollEntry> watched, int milliseconds) => poll(watched, (nuint)watched.Length, milliseconds);

    /// <summary>Reads what is there; below 0 where it fails.</summary>
    public static int Read(SafeFileHandle device, Span<byte> into) => (int)read(device, into, (nuint)into.Length);

    /// <summary>Writes; below 0 where it fails.</summary>
    public static int Write(SafeFileHandle device, ReadOnlySpan<byte> bytes) => (int)write(device, bytes, (nuint)bytes.Length);

    /// <summary>What this user may do with a node.</summary>
    public static HidAccess AccessTo(string node) =>
        !File.Exists(node) ? HidAccess.Missing
        : !OperatingSystem.IsLinux() || access(node, MayRead | MayWrite) == 0 ? HidAccess.ReadWrite
        : access(node, MayRead) == 0 ? HidAccess.ReadOnly
        : HidAccess.Denied;

    /// <summary>One descriptor to wait for.</summary>
    /// <param name="Descriptor">The descriptor.</param>
    /// <param name="Asked">What is waited for.</param>
    /// <param name="Seen">What is there; more than was asked where the other end is gone.</param>
    [StructLayout(LayoutKind.Sequential)]
    public record struct PollEntry(int Descriptor, short Asked, short Seen = 0);

    [LibraryImport("libc", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    private static partial int open(string path, int flags);

    [LibraryImport("libc", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    private static partial int access(string path, int mode);

    [LibraryImport("libc", SetLastError = true)]
    private static partial int eventfd(uint start, int flags);

    [LibraryImport("libc", SetLastError = true)]
    private static partial int poll(Span<PollEntry> watched, nuint count, int milliseconds);

    [LibraryImport("libc", SetLastError = true)]
    private static partial nint read(SafeFileHandle device, Span<byte> into, nuint length);

    [LibraryImport("libc", SetLastError = true)]
    private static partial nint write(SafeFileHandle device, ReadOnlySpan<byte> bytes, nuint length);
}
