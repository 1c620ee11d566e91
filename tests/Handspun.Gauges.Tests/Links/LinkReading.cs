using System.Buffers;
using Handspun.Gauges.Links;

namespace Handspun.Gauges.Tests.Links;

/// <summary>Reads what a link brings.</summary>
internal static class LinkReading
{
    /// <summary>The next so many bytes.</summary>
    public static async Task<byte[]> BytesAsync(IGaugeLink link, int count)
    {
        using var cap = new CancellationTokenSource(Until.Cap);
        var read = await link.Input.ReadAtLeastAsync(count, cap.Token);
        var bytes = read.Buffer.Slice(0, count).ToArray();
        link.Input.AdvanceTo(read.Buffer.GetPosition(count));
        return bytes;
    }

    /// <summary>All bytes until the link ends, in one of the ways in which a link may end.</summary>
    public static async Task<byte[]> ToTheEndAsync(IGaugeLink link)
    {
        List<byte> bytes = [];
        try
        {
            while (true)
            {
                var read = await link.Input.ReadAsync();
                bytes.AddRange(read.Buffer.ToArray());
                link.Input.AdvanceTo(read.Buffer.End);
                if (read.IsCompleted)
                {
                    return [.. bytes];
                }
            }
        }
        catch (Exception e) when (e is IOException or ObjectDisposedException)
        {
            return [.. bytes];
        }
    }
}
