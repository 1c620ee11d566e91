using System.Buffers;
using System.Text;
using Handspun.Gauges.Framing;

namespace Handspun.Gauges.Tests.Framing;

/// <summary>What a framing finds in a stream: frames as text, and what else it tells in brackets.</summary>
internal static class Framings
{
    public static List<string> Found(IFraming framing, IEnumerable<byte[]> pieces, out int pending)
    {
        var found = new List<string>();
        var chunks = new Chunks();
        foreach (var piece in pieces)
        {
            chunks.Add(piece, (ref ReadOnlySequence<byte> waiting) =>
            {
                while (framing.TryTake(ref waiting, out var frame) is var cut && cut != Cut.None)
                {
                    found.Add(cut == Cut.Frame ? Encoding.Latin1.GetString(frame) : $"[{cut}]");
                }
            });
        }

        pending = chunks.Pending;
        return found;
    }

    public static List<string> Found(IFraming framing, string text) => Found(framing, [Encoding.Latin1.GetBytes(text)], out _);

    /// <summary>The same stream in one piece, and cut in two at every byte.</summary>
    public static IEnumerable<byte[][]> Cuts(string text)
    {
        var bytes = Encoding.Latin1.GetBytes(text);
        return Enumerable.Range(1, bytes.Length - 1).Select(cut => new[] { bytes[..cut], bytes[cut..] }).Append([bytes]);
    }
}
