using System.Buffers;
using Handspun.Gauges.Decoding;
using Handspun.Gauges.Decoding.Binary;
using Handspun.Gauges.Decoding.Registers;
using Handspun.Gauges.Readings;
using Handspun.Gauges.Tests.Framing;

namespace Handspun.Gauges.Tests.Decoding.Registers;

public class RegisterCodecTests
{
    private static readonly Dictionary<string, byte[]> Published = File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Decoding", "Registers", "modbus-rtu.csv"))
        .Where(line => !line.StartsWith('#')).Skip(1).Select(line => line.Split(','))
        .ToDictionary(row => row[0], row => Convert.FromHexString(row[1].Replace(" ", "", StringComparison.Ordinal)));

    // Modbus Application Protocol V1.1b3, 6.3: registers 108 to 110 of unit 17 hold 555, 0 and 100.
    private static readonly RegisterRead Example = new() { Address = 17, Function = 3, From = 0x6B, Count = 3 };

    [Theory]
    [InlineData("fc03-request-slave17", 17, 3, 0x6B, 3)]
    [InlineData("fc03-request-slave1", 1, 3, 0x6B, 3)]
    [InlineData("fc04-request-slave17", 17, 4, 8, 1)]
    [InlineData("fc03-request-two-registers", 1, 3, 0, 2)]
    public void Request_OfAPublishedRead_IsThePublishedFrame(string name, int address, int function, int from, int count) =>
        Assert.Equal(Published[name], new RegisterRead { Address = address, Function = function, From = from, Count = count }.Request());

    [Theory]
    [InlineData(0, 555)]
    [InlineData(1, 0)]
    [InlineData(2, 100)]
    public void Answer_OfThePublishedRead_HoldsThePublishedValues(int at, double value) =>
        Assert.Equal([FrameResult.Of(value)], Decode(Example with { ValueAt = at }, [Published["fc03-response-slave17"]]));

    [Fact]
    public void Answer_OfAnInputRegister_HoldsThePublishedValue() =>
        Assert.Equal([FrameResult.Of(10)], Decode(new() { Address = 17, Function = 4, From = 8, Count = 1 }, [Published["fc04-response-slave17"]]));

    [Fact]
    public void Refusal_AsPublished_IsARefusedFrame() =>
        Assert.Equal([FrameFault.Refused], Decode(Example, [Published["fc03-exception-2"]]).Select(frame => frame.Fault));

    [Fact]
    public void Answer_BehindItsOwnEchoAndNoise_CutAtEveryByte_IsFoundOnce()
    {
        byte[] stream = [.. Published["fc03-request-slave17"], 0x11, 0x03, 0x06, 0x11, .. Published["fc03-response-slave17"], .. Published["fc03-request-slave17"], .. Published["fc03-response-slave17"]];
        for (var cut = 1; cut < stream.Length; cut++)
        {
            var frames = Decode(Example, [stream[..cut], stream[cut..]]);
            Assert.Equal([FrameFault.Incomplete, FrameFault.None, FrameFault.None], frames.Select(frame => frame.Fault));
            Assert.Equal(555, frames[1].Value);
        }
    }

    [Fact]
    public void Answer_OfAnotherUnitOrFunctionOrLength_IsNone()
    {
        Assert.DoesNotContain(Decode(Example, [Published["fc03-response-slave1"]]), frame => frame.HasValue);
        Assert.DoesNotContain(Decode(Example with { Function = 4 }, [Published["fc03-response-slave17"]]), frame => frame.HasValue);
        Assert.DoesNotContain(Decode(Example with { Count = 2 }, [Published["fc03-response-slave17"]]), frame => frame.HasValue);
    }

    // -2 and 100000 in two's complement, high word first; 0.845 as IEC 60559 binary32 is 3F58 51EC (worked out by an independent library).
    [Theory]
    [InlineData(RegisterType.Signed32, false, "FFFFFFFE", -2)]
    [InlineData(RegisterType.Unsigned32, false, "FFFFFFFE", 4294967294)]
    [InlineData(RegisterType.Signed32, true, "86A00001", 100000)]
    [InlineData(RegisterType.FloatingPoint, false, "3F5851EC", 0.845f)]
    [InlineData(RegisterType.FloatingPoint, true, "51EC3F58", 0.845f)]
    public void Value_OfTwoRegisters_IsReadInItsOrder(RegisterType type, bool lowFirst, string registers, double value) =>
        Assert.Equal([FrameResult.Of(value)], Decode(new() { From = 0, Count = 2, Type = type, LowWordFirst = lowFirst }, [Answer(registers)]));

    [Fact]
    public void Bits_OfAStateRegister_TellUnitAndFlags()
    {
        var read = new RegisterRead { From = 0, Count = 2, Unit = new UnitBit(17, GaugeUnit.Inch) };
        Assert.Equal([FrameResult.Of(7, GaugeUnit.Inch, GaugeFlags.Alarm)], Decode(read, [Answer("00070102")], new FlagBit(24, GaugeFlags.Alarm, false)));
        Assert.Equal([FrameResult.Of(7, GaugeUnit.Millimetre)], Decode(read, [Answer("00070001")], new FlagBit(24, GaugeFlags.Alarm, false)));
    }

    private static byte[] Answer(string registers)
    {
        byte[] frame = [1, 3, (byte)(registers.Length / 2), .. Convert.FromHexString(registers)];
        var check = Gauges.Framing.Crc16.Of(frame);
        return [.. frame, (byte)check, (byte)(check >> 8)];
    }

    private static List<FrameResult> Decode(RegisterRead read, IEnumerable<byte[]> pieces, params FlagBit[] flags)
    {
        var codec = new RegisterCodec(read, new(flags, BitOrder.RegisterLowFirst));
        var frames = new List<FrameResult>();
        var chunks = new Chunks();
        foreach (var piece in pieces)
        {
            chunks.Add(piece, (ref ReadOnlySequence<byte> pending) =>
            {
                while (codec.TryTakeFrame(ref pending, out var frame))
                {
                    frames.Add(frame);
                }
            });
        }

        return frames;
    }
}
