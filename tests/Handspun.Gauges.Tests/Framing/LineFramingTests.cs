using System.Buffers;
using System.Text;
using CsCheck;
using Handspun.Gauges.Framing;

namespace Handspun.Gauges.Tests.Framing;

public class LineFramingTests
{
    private const int Longest = 12;

    [Theory]
    [InlineData("one\ntwo\nthree\n")]
    [InlineData("one\rtwo\rthree\r")]
    [InlineData("one\r\ntwo\r\nthree\r\n")]
    [InlineData("\r\n\r\none\n\ntwo\r\rthree\n\r\n")]
    public void Lines_WithAnyEnding_CutAtEveryByte_AreTheSame(string text)
    {
        var stream = Encoding.ASCII.GetBytes(text);
        for (var cut = 1; cut < stream.Length; cut++)
        {
            Assert.Equal(["one", "two", "three"], Found(new LineFraming(Longest), [stream[..cut], stream[cut..]]));
        }
    }

    [Fact]
    public void Line_WithoutItsEnd_WaitsForIt()
    {
        var framing = new LineFraming(Longest);
        var chunks = new Chunks();

        Assert.Empty(Take(framing, chunks, "+0.01"u8));
        Assert.Equal(5, chunks.Pending);
        Assert.Equal(["+0.012"], Take(framing, chunks, "2\r"u8));
        Assert.Equal(0, chunks.Pending);
    }

    [Fact]
    public void Line_ThatIsJustTheLongest_IsWhole() =>
        Assert.Equal(["123456789012"], Found(new LineFraming(Longest), ["123456789012\n"u8.ToArray()]));

    [Theory]
    [InlineData(1)]
    [InlineData(5)]
    [InlineData(100)]
    public void Line_ThatIsTooLong_IsToldOnce_AndTheNextIsGood(int size) => Assert.Equal(
        ["TooLong", "good"],
        Found(new LineFraming(Longest), Chunks.Of("1234567890123\r\ngood\r\n"u8.ToArray(), size)));

    [Fact]
    public void Line_ThatNeverEnds_KeepsNothing_AndTheNextIsGood()
    {
        var framing = new LineFraming(Longest);
        var chunks = new Chunks();
        var endless = new byte[1024];
        Array.Fill(endless, (byte)'7');
        List<string> found = [];
        for (var kilobytes = 0; kilobytes < 1024; kilobytes++)
        {
            found.AddRange(Take(framing, chunks, endless));
            Assert.InRange(chunks.Pending, 0, Longest);
        }

        found.AddRange(Take(framing, chunks, "77\n+0.5\n"u8));

        Assert.Equal(["TooLong", "+0.5"], found);
    }

    [Fact]
    public void Stream_InAnyPieces_GivesTheSameFrames() => Gen.Select(
        Gen.OneOf("\r", "\n", "\r\n", "a", "0", "12", "longer than a line").Array[0, 30], Chunks.Sizes)
        .Sample((words, sizes) =>
        {
            var stream = Encoding.ASCII.GetBytes(string.Concat(words));
            Assert.Equal(Found(new LineFraming(Longest), [stream]), Found(new LineFraming(Longest), Chunks.Of(stream, sizes)));
        });

    // Against a second way to say what a line is, for streams in which every line is short enough.
    [Fact]
    public void Stream_OfShortLines_GivesWhatSplittingGives() => Gen.Select(
        Gen.OneOf("\r", "\n", "\r\n").SelectMany(end => Gen.Char["+-.0123456789 mn"].Array[0, Longest].Select(line => new string(line) + end)).Array[0, 12],
        Chunks.Sizes)
        .Sample((lines, sizes) =>
        {
            var text = string.Concat(lines);
            Assert.Equal(
                text.Split('\r', '\n').Where(line => line.Length > 0),
                Found(new LineFraming(Longest), Chunks.Of(Encoding.ASCII.GetBytes(text), sizes)));
        });

    private static List<string> Found(LineFraming framing, IEnumerable<byte[]> pieces)
    {
        var chunks = new Chunks();
        return [.. pieces.SelectMany(piece => Take(framing, chunks, piece))];
    }

    private static List<string> Take(LineFraming framing, Chunks chunks, ReadOnlySpan<byte> piece)
    {
        List<string> found = [];
        chunks.Add(piece, (ref ReadOnlySequence<byte> pending) =>
        {
            while (framing.TryTake(ref pending, out var line) is var cut && cut != Cut.None)
            {
                found.Add(cut == Cut.Frame ? Encoding.ASCII.GetString(line) : cut.ToString());
            }
        });
        return found;
    }
}
