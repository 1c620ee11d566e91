using System.Buffers;
using System.Text;
using CsCheck;
using Handspun.Gauges.Decoding;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Readings;
using Handspun.Gauges.Tests.Framing;

namespace Handspun.Gauges.Tests.Decoding;

public class ReadingDecoderTests
{
    private static readonly GaugeProfile Profile = new() { Name = "test", Title = "test", Frame = new TextLineFormat() };

    private readonly ReadingDecoder _decoder = new(Profile);
    private readonly Chunks _chunks = new();
    private readonly List<Reading> _readings = [];

    [Fact]
    public void Port_OpenedAtAnyByteOfAFrame_NeverGivesItsTail()
    {
        var frame = "+0.012\r\n"u8.ToArray();
        for (var cut = 0; cut < frame.Length; cut++)
        {
            var decoder = new ReadingDecoder(Profile);
            decoder.LinkOpened(TimeSpan.Zero);
            var readings = new List<Reading>();
            var pending = new ReadOnlySequence<byte>([.. frame[cut..], .. "+0.013\r\n+0.014\r\n"u8]);
            decoder.Decode(ref pending, TimeSpan.FromMilliseconds(5), readings);

            Assert.All(readings, reading => Assert.Contains(reading.Millimetres, new[] { 0.013, 0.014 }));
            Assert.Equal(0.014, readings[^1].Millimetres);
            Assert.Equal(0, decoder.Unreadable);
        }
    }

    [Fact]
    public void Port_WithTheTailInTwoPieces_GivesNoneOfIt()
    {
        _decoder.LinkOpened(TimeSpan.Zero);
        Feed("1", 0.02);
        Feed("2\r\n", 0.2);   // a pause within the tail makes no frame of it
        Feed("+0.013\r\n", 0.3);

        Assert.Equal([0.013], _readings.Select(reading => reading.Millimetres));
    }

    [Fact]
    public void Port_AfterASilence_GivesItsFirstFrame()
    {
        _decoder.LinkOpened(TimeSpan.FromSeconds(1));
        Feed("+0.012\r\n", 1.1);

        Assert.Equal([Reading.FromMillimetres(0.012, TimeSpan.FromSeconds(1.1))], _readings);
    }

    // As on the replay of a journal whose older files are gone.
    [Fact]
    public void Bytes_OfWhichTheBeginningIsNotThere_GiveNoTail()
    {
        Feed("12\r\n+0.013\r\n", 5);

        Assert.Equal([0.013], _readings.Select(reading => reading.Millimetres));
    }

    [Fact]
    public void Port_OpenedAgain_PassesOverItsFirstFrameAgain_AndForgetsATooLongOne()
    {
        _decoder.LinkOpened(TimeSpan.Zero);
        Feed(new string('7', 200), 0.2);
        Assert.Equal(1, _decoder.Unreadable);
        _decoder.LinkOpened(TimeSpan.FromSeconds(3));
        Feed("12\r\n+0.013\r\n", 3.01);

        Assert.Equal([0.013], _readings.Select(reading => reading.Millimetres));
    }

    [Fact]
    public void Frames_WithoutAReading_AreCounted()
    {
        _decoder.LinkOpened(TimeSpan.Zero);
        Feed("+0.1\nlow battery\n+0.2\n1,5\n", 1);

        Assert.Equal([0.1, 0.2], _readings.Select(reading => reading.Millimetres));
        Assert.Equal(2, _decoder.Unreadable);
        Assert.Equal(4, _decoder.Frames);
    }

    [Fact]
    public void Reading_InPieces_HasTheTimeOfItsLastByte()
    {
        _decoder.LinkOpened(TimeSpan.Zero);
        Feed("+0.0", 1);
        Feed("12\n", 1.5);

        Assert.Equal([Reading.FromMillimetres(0.012, TimeSpan.FromSeconds(1.5))], _readings);
    }

    [Fact]
    public void Reading_OfAnInchGauge_IsInMillimetres()
    {
        var decoder = new ReadingDecoder(Profile with { Value = new ValueFormat { Unit = GaugeUnit.Inch } });
        decoder.LinkOpened(TimeSpan.Zero);
        var pending = new ReadOnlySequence<byte>("1\n1 mm\n"u8.ToArray());
        decoder.Decode(ref pending, TimeSpan.FromSeconds(1), _readings);

        Assert.Equal([25.4, 1.0], _readings.Select(reading => reading.Millimetres));
    }

    [Fact]
    public void Noise_OfAnyBytes_NeverThrows_AndOneFrameAfterItTheDecoderFindsItsFeet() => Gen.Select(
        Gen.Byte.Array[0, 600], Chunks.Sizes)
        .Sample((noise, sizes) =>
        {
            var decoder = new ReadingDecoder(Profile);
            decoder.LinkOpened(TimeSpan.Zero);
            var chunks = new Chunks();
            var readings = new List<Reading>();
            foreach (var piece in Chunks.Of([.. noise, .. "\n+0.111\n+0.222\n+0.333\n"u8], sizes))
            {
                chunks.Add(piece, (ref ReadOnlySequence<byte> pending) => decoder.Decode(ref pending, TimeSpan.FromSeconds(1), readings));
            }

            Assert.Equal([0.111, 0.222, 0.333], readings.TakeLast(3).Select(reading => reading.Millimetres));
            Assert.InRange(chunks.Pending, 0, new FrameCut().Longest);
        });

    // Most random bytes are never close to a number; these are.
    [Fact]
    public void Noise_OfNumbersGoneWrong_NeverThrows_AndGivesFiniteReadings() => Gen.Select(
        Gen.Char["0123456789+-., \tmin\"eE\r\n"].Array[0, 300], Chunks.Sizes)
        .Sample((noise, sizes) =>
        {
            var decoder = new ReadingDecoder(Profile with { Frame = new TextLineFormat { Cut = new FrameCut { Longest = 256 } }, Value = new ValueFormat { Unit = GaugeUnit.Inch } });
            decoder.LinkOpened(TimeSpan.Zero);
            var chunks = new Chunks();
            var readings = new List<Reading>();
            foreach (var piece in Chunks.Of(Encoding.ASCII.GetBytes(new string(noise)), sizes))
            {
                chunks.Add(piece, (ref ReadOnlySequence<byte> pending) => decoder.Decode(ref pending, TimeSpan.FromSeconds(1), readings));
            }

            Assert.All(readings, reading => Assert.True(double.IsFinite(reading.Millimetres)));
            Assert.Equal(decoder.Frames, decoder.Unreadable + readings.Count);
        });

    [Fact]
    public void Line_OfAsManyDigitsAsAProfileAllows_IsAFiniteReading()
    {
        var decoder = new ReadingDecoder(Profile with { Frame = new TextLineFormat { Cut = new FrameCut { Longest = 256 } }, Value = new ValueFormat { Unit = GaugeUnit.Inch } });
        decoder.LinkOpened(TimeSpan.Zero);
        var pending = new ReadOnlySequence<byte>(Encoding.ASCII.GetBytes(new string('9', 256) + "\n"));
        decoder.Decode(ref pending, TimeSpan.FromSeconds(1), _readings);

        Assert.Equal(1e256 * 25.4, Assert.Single(_readings).Millimetres, 1e245);
    }

    private void Feed(string text, double seconds) => _chunks.Add(
        Encoding.ASCII.GetBytes(text),
        (ref ReadOnlySequence<byte> pending) => _decoder.Decode(ref pending, TimeSpan.FromSeconds(seconds), _readings));
}
