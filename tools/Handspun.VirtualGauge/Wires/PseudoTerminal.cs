using System.Runtime.InteropServices;

namespace Handspun.VirtualGauge.Wires;

/// <summary>A pseudo-terminal: this program holds one end, the other is a serial device for anybody to open.</summary>
internal sealed partial class PseudoTerminal : IWire
{
    private const int ReadWrite = 2;
    private const int SetNow = 0;
    private const short HungUp = 0x10;
    private const int GetFlags = 3;
    private const int SetFlags = 4;

    private readonly int _master;
    private readonly string? _link;

    /// <summary>A new pseudo-terminal, in raw mode.</summary>
    /// <param name="link">A symbolic link to the device, which keeps its name when the cable is unplugged and plugged again; null for none.</param>
    public PseudoTerminal(string? link)
    {
        var noControl = OperatingSystem.IsMacOS() ? 0x20000 : 0x100;
        _master = Checked(posix_openpt(ReadWrite | noControl), "open a pseudo-terminal");
        Checked(grantpt(_master), "grant it");
        Checked(unlockpt(_master), "unlock it");
        var device = Marshal.PtrToStringUTF8(ptsname(_master)) ?? throw new IOException("The pseudo-terminal has no name.");
        MakeRaw(device);
        var nonBlocking = OperatingSystem.IsMacOS() ? 0x4 : 0x800;
        Checked(fcntl(_master, SetFlags, fcntl(_master, GetFlags, 0) | nonBlocking), "make it non-blocking");
        Port = device;
        if (link is not null)
        {
            File.Delete(link);
            File.CreateSymbolicLink(link, device);
            (_link, Port) = (link, link);
        }
    }

    public string Port { get; }

    public unsafe void Send(ReadOnlySpan<byte> bytes)
    {
        var state = new Poll { Descriptor = _master };
        if (poll(&state, 1, 0) > 0 && (state.Seen & HungUp) != 0)
        {
            return;   // nobody has the other end open
        }

        fixed (byte* start = bytes)
        {
            _ = write(_master, start, (nuint)bytes.Length);   // a full line drops what does not fit, as a cable would
        }
    }

    public void Dispose()
    {
        if (_link is not null)
        {
            File.Delete(_link);
        }

        _ = close(_master);
    }

    // The size of struct termios differs between systems; it is only passed through, so a buffer that is large enough will do.
    private static unsafe void MakeRaw(string device)
    {
        var slave = Checked(open(device, ReadWrite), "open its other end");
        var settings = stackalloc byte[256];
        Checked(tcgetattr(slave, settings), "read its settings");
        cfmakeraw(settings);
        Checked(tcsetattr(slave, SetNow, settings), "make it raw");
        _ = close(slave);
    }

    private static int Checked(int result, string doing) => result >= 0
        ? result
        : throw new IOException($"Could not {doing}: {Marshal.GetPInvokeErrorMessage(Marshal.GetLastPInvokeError())}.");

    [StructLayout(LayoutKind.Sequential)]
    private struct Poll
    {
        public int Descriptor;
        public short Asked;
        public short Seen;
    }

    [LibraryImport("libc", SetLastError = true)]
    private static partial int posix_openpt(int flags);

    [LibraryImport("libc", SetLastError = true)]
    private static partial int grantpt(int descriptor);

    [LibraryImport("libc", SetLastError = true)]
    private static partial int unlockpt(int descriptor);

    [LibraryImport("libc", SetLastError = true)]
    private static partial nint ptsname(int descriptor);

    [LibraryImport("libc", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    private static partial int open(string path, int flags);

    [LibraryImport("libc", SetLastError = true)]
    private static unsafe partial int tcgetattr(int descriptor, byte* settings);

    [LibraryImport("libc")]
    private static unsafe partial void cfmakeraw(byte* settings);

    [LibraryImport("libc", SetLastError = true)]
    private static unsafe partial int tcsetattr(int descriptor, int when, byte* settings);

    [LibraryImport("libc", SetLastError = true)]
    private static partial int fcntl(int descriptor, int command, int argument);

    [LibraryImport("libc", SetLastError = true)]
    private static unsafe partial int poll(Poll* descriptors, nuint count, int milliseconds);

    [LibraryImport("libc", SetLastError = true)]
    private static unsafe partial nint write(int descriptor, byte* bytes, nuint count);

    [LibraryImport("libc", SetLastError = true)]
    private static partial int close(int descriptor);
}
