using System.Buffers.Binary;
using System.Collections.Frozen;

namespace Handspun.Simulation.Speech;

/// <summary>What HID gauges send, written down here without the decoders' code.</summary>
/// <param name="Descriptor">What the gauge says of its reports (USB HID 1.11, section 6.2.2).</param>
/// <param name="Reports">The reports for a value in millimetres, each as it is read at once, with the index's button up or down.</param>
public sealed record HidSpeech(byte[] Descriptor, Func<double, bool, IReadOnlyList<byte[]>> Reports)
{
    // A multi-axis controller with a slider of 16 bits, two buttons and six bits of nothing. The slider counts -32768 to 32767
    // for as many ten-thousandths of a centimetre.
    private static readonly byte[] SliderDescriptor = Convert.FromHexString(
        "05010908A1010936160080" + "26FF7F36008046FF7F550C65117510950181" + "02" +
        "0509190129021500250135004500550065007501950281" + "02950681" + "03C0");

    // The same kind of device with three bytes of its maker's own, of which it says nothing, and one byte of state.
    private static readonly byte[] OwnDescriptor = Convert.FromHexString("0600FF0901A101090115002" + "6FF007508950481" + "02C0");

    // The keyboard of USB HID 1.11, appendix B.1.
    private static readonly byte[] KeyboardDescriptor = Convert.FromHexString(
        "05010906A101750195080507" + "19E029E715002501810295017508810195057501050819012905910295017503910195067508150026FF00050719002AFF008100C0");

    /// <summary>The gauges, by the name of the profile that reads them.</summary>
    public static FrozenDictionary<string, HidSpeech> ByProfile { get; } = new Dictionary<string, HidSpeech>
    {
        ["hid-report"] = new(SliderDescriptor, (millimetres, _) => [Slider(millimetres, 0)]),
        ["hid-report-index"] = new(SliderDescriptor, (millimetres, isDown) => [Slider(millimetres, isDown ? (byte)1 : (byte)0)]),
        ["hid-report-bits"] = new(OwnDescriptor, (millimetres, _) => [ThreeBytes(millimetres)]),
        ["hid-keyboard"] = new(KeyboardDescriptor, (millimetres, _) => Typed(IndicatorLine.Of(millimetres, inch: false))),
    }.ToFrozenDictionary(StringComparer.Ordinal);

    private static byte[] Slider(double millimetres, byte buttons)
    {
        var report = new byte[3];
        BinaryPrimitives.WriteInt16LittleEndian(report, checked((short)Math.Round(millimetres * 1000)));
        report[2] = buttons;
        return report;
    }

    private static byte[] ThreeBytes(double millimetres)
    {
        var report = new byte[4];
        BinaryPrimitives.WriteInt32LittleEndian(report, (int)Math.Round(millimetres * 1000) & 0xFFFFFF);
        return report;
    }

    // Each key down and up again, shift around the plus (HID Usage Tables, page 0x07).
    private static List<byte[]> Typed(string line)
    {
        const byte shift = 2;
        List<byte[]> reports = [];
        foreach (var letter in line + "\n")
        {
            var key = letter switch
            {
                '0' => 0x27,
                >= '1' and <= '9' => 0x1E + letter - '1',
                >= 'a' and <= 'z' => 0x04 + letter - 'a',
                '+' => 0x2E,
                '-' => 0x2D,
                '.' => 0x37,
                ' ' => 0x2C,
                _ => 0x28,
            };
            var down = new byte[8];
            (down[0], down[2]) = (letter == '+' ? shift : (byte)0, (byte)key);
            reports.Add(down);
            reports.Add(new byte[8]);
        }

        return reports;
    }
}
