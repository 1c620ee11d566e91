using System.IO.Pipelines;
using System.Runtime.InteropServices;
using System.Threading.Channels;
using Handspun.Gauges.Hid;
using Microsoft.Win32.SafeHandles;

namespace Handspun.Gauges.Links;

/// <summary>A HID gauge on Linux: each read of its input is one report, as the device sent it.</summary>
/// <remarks>
/// The kernel keeps only a few dozen reports for a reader that is late, so a thread of its own takes them off at once; when
/// the queue behind it is full too, it waits, and the kernel lets the oldest go. A pulled cable shows as a hang-up or as an
/// error of the read, and either ends the input. The thread alone touches the device and closes it.
/// </remarks>
internal sealed class HidrawLink : IGaugeLink
{
    private const int Waiting = 4096;
    private const int LongestReport = 16384;   // the kernel's own bound (from memory)
    private const int FullPause = 5;

    private readonly SafeFileHandle _device;
    private readonly SafeFileHandle _stop = HidrawCalls.NewSignal();
    private readonly TaskCompletionSource _ended = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly Channel<ReadOnlyMemory<byte>> _reports = Channel.CreateBounded<ReadOnlyMemory<byte>>(
        new BoundedChannelOptions(Waiting) { SingleReader = true, SingleWriter = true });

    private int _disposed;

    private HidrawLink(SafeFileHandle device, ReadOnlyMemory<byte> descriptor)
    {
        (_device, ReportDescriptor) = (device, descriptor);
        Input = new BorderedReader(NextAsync);
        new Thread(Listen) { IsBackground = true, Name = "hidraw" }.Start();
    }

    public PipeReader Input { get; }

    public ReadOnlyMemory<byte> ReportDescriptor { get; }

    public static IGaugeLink Open(GaugePort.Hid port, LinkSettings settings, HidDevices devices)
    {
        var device = devices.Find(port, settings.Hid);
        return Open(device.Node, device);
    }

    public static IGaugeLink Open(GaugePort.HidNode port, LinkSettings settings, HidDevices devices)
    {
        if (!OperatingSystem.IsLinux())
        {
            throw new LinkUnavailableException(LinkFault.NotAPort, HidSentence.LinuxOnly);
        }

        var device = devices.At(port.Node);
        return device?.Descriptor is { } descriptor && settings.Hid?.Suits(descriptor) == false
            ? throw new LinkUnavailableException(LinkFault.NotAPort, HidSentence.Unsuited(device))
            : Open(port.Node, device);
    }

    /// <summary>Sends one output report: its number first, 0 where reports have none.</summary>
    /// <exception cref="IOException">It did not go out.</exception>
    public ValueTask SendAsync(ReadOnlyMemory<byte> bytes, CancellationToken cancellationToken)
    {
        cancellationToken.ThrowIfCancellationRequested();
        return HidrawCalls.Write(_device, bytes.Span) == bytes.Length
            ? ValueTask.CompletedTask
            : throw new IOException($"The gauge did not take a report ({Marshal.GetPInvokeErrorMessage(Marshal.GetLastPInvokeError())}).");
    }

    public async ValueTask DisposeAsync()
    {
        if (Interlocked.Exchange(ref _disposed, 1) == 0)
        {
            HidrawCalls.Signal(_stop);
            await _ended.Task;
            _stop.Dispose();
        }
    }

    private static HidrawLink Open(string node, HidDevice? device)
    {
        var handle = HidrawCalls.Open(node, out var error);
        return handle.IsInvalid ? throw Refusal(node, device, error) : new(handle, device?.DescriptorBytes ?? default);
    }

    private static LinkUnavailableException Refusal(string node, HidDevice? device, int error) => error switch
    {
        HidrawCalls.NoEntry or HidrawCalls.NoDevice or HidrawCalls.NoSuchAddress => new(LinkFault.Absent, HidSentence.Absent(new GaugePort.HidNode(node))),
        HidrawCalls.AccessDenied or HidrawCalls.NotPermitted => new(LinkFault.NotPermitted, HidSentence.NotPermitted(node, device?.Identity)),
        HidrawCalls.Busy => new(LinkFault.Busy, HidSentence.Busy(node)),
        _ => new(LinkFault.NotAPort, HidSentence.NoHid(node)),
    };

    private async ValueTask<ReadOnlyMemory<byte>> NextAsync(CancellationToken cancellationToken) =>
        await _reports.Reader.WaitToReadAsync(cancellationToken) && _reports.Reader.TryRead(out var report) ? report : default;

    private void Listen()
    {
        try
        {
            var buffer = new byte[LongestReport];
            while (Read(buffer) is > 0 and var length && Queue(buffer.AsSpan(0, length).ToArray()))
            {
            }
        }
        finally
        {
            _device.Dispose();
            _reports.Writer.TryComplete();
            _ended.TrySetResult();
        }
    }

    // 0 when it is told to stop or the device is gone. Reports that came before the hang-up are read before it counts.
    private int Read(Span<byte> buffer)
    {
        while (true)
        {
            Span<HidrawCalls.PollEntry> watched = [Watch(_device), Watch(_stop)];
            var ready = HidrawCalls.Poll(watched, -1);
            if (ready < 0 && Marshal.GetLastPInvokeError() == HidrawCalls.Interrupted)
            {
                continue;
            }

            if (ready < 0 || watched[1].Seen != 0 || (watched[0].Seen & HidrawCalls.Readable) == 0)
            {
                return 0;
            }

            var length = HidrawCalls.Read(_device, buffer);
            if (length >= 0 || Marshal.GetLastPInvokeError() is not (HidrawCalls.TryAgain or HidrawCalls.Interrupted))
            {
                return Math.Max(length, 0);
            }
        }
    }

    private bool Queue(ReadOnlyMemory<byte> report)
    {
        while (!_reports.Writer.TryWrite(report))
        {
            Span<HidrawCalls.PollEntry> watched = [Watch(_stop)];
            if (HidrawCalls.Poll(watched, FullPause) > 0)
            {
                return false;
            }
        }

        return true;
    }

    private static HidrawCalls.PollEntry Watch(SafeFileHandle handle) => new((int)handle.DangerousGetHandle(), HidrawCalls.Readable);
}
