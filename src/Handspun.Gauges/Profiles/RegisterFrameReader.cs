using Handspun.Gauges.Decoding.Registers;

namespace Handspun.Gauges.Profiles;

/// <summary>Reads from a profile which registers are read over Modbus RTU.</summary>
internal static class RegisterFrameReader
{
    private const int MostAddress = 247;   // Modbus over Serial Line V1.02, section 2.2
    private const int RegisterBits = 16;

    private static readonly Dictionary<string, int> Functions = new() { ["holding"] = 3, ["input"] = 4 };

    private static readonly Dictionary<string, RegisterType> Types = new()
    {
        ["unsigned-16"] = RegisterType.Unsigned16,
        ["signed-16"] = RegisterType.Signed16,
        ["unsigned-32"] = RegisterType.Unsigned32,
        ["signed-32"] = RegisterType.Signed32,
        ["float-32"] = RegisterType.FloatingPoint,
    };

    private static readonly Dictionary<string, bool> Orders = new() { ["high-word-first"] = false, ["low-word-first"] = true };

    /// <summary>Reads it.</summary>
    public static FrameFormat Read(ProfileSection section, ProfileSection flags)
    {
        if (!section.Has("register"))
        {
            section.Complain("register", "is the first register that is read, from 0 as it goes over the wire");
        }

        var read = new RegisterRead
        {
            Address = section.Whole("address", 1, 1, MostAddress),
            Function = section.Choice("registers", "holding", Functions),
            From = section.Whole("register", 0, 0, ushort.MaxValue),
            Count = section.Whole("count", 0, 1, RegisterRead.MostRegisters),
            ValueAt = section.Whole("value_at", 0, 0, RegisterRead.MostRegisters - 1),
            Type = section.Choice("type", "signed-16", Types),
            LowWordFirst = section.Choice("order", "high-word-first", Orders),
        };
        read = read with { Count = read.Count == 0 ? Math.Min(read.ValueAt + read.Width, RegisterRead.MostRegisters) : read.Count };
        if (read.ValueAt + read.Width > read.Count || read.From + read.Count > ushort.MaxValue + 1)
        {
            section.Complain("count", "does not reach as far as the value, or beyond the last register there can be");
        }

        var bits = RegisterBits * read.Count;
        return new RegisterFormat
        {
            Read = read with { Unit = BitFrameReader.Unit(section, bits) },
            Flags = FlagsReader.ReadBits(flags, bits),
        };
    }
}
