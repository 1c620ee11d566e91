namespace Handspun.Gauges.Hid;

/// <summary>What a HID device says of its reports: which fields they have, where they lie and what they stand for.</summary>
public sealed class ReportDescriptor
{
    /// <summary>Bytes in the longest descriptor that is taken; Linux takes 4096 (from memory).</summary>
    public const int LongestBytes = 65535;

    private readonly IReadOnlyDictionary<(ReportKind Kind, byte Id), int> _bits;

    internal ReportDescriptor(IReadOnlyList<ReportField> fields, IReadOnlyDictionary<(ReportKind Kind, byte Id), int> bits, int items) =>
        (Fields, _bits, Items) = (fields, bits, items);

    /// <summary>The fields of all reports, in the order of the descriptor.</summary>
    public IReadOnlyList<ReportField> Fields { get; }

    /// <summary>Items in the descriptor, of every kind.</summary>
    public int Items { get; }

    /// <summary>Whether the first byte of every report is its number.</summary>
    public bool NumbersReports => _bits.Keys.Any(report => report.Id != 0);

    /// <summary>Bits in a report after its number, padding included; 0 where there is no such report.</summary>
    public int BitsOf(ReportKind kind, byte id) => _bits.GetValueOrDefault((kind, id));

    /// <summary>Bytes in a report as it is read or written, its number included; 0 where there is no such report.</summary>
    public int BytesOf(ReportKind kind, byte id) => BitsOf(kind, id) is > 0 and var bits ? (bits + 7) / 8 + (NumbersReports ? 1 : 0) : 0;

    /// <summary>Bytes in the longest input report as it is read; 0 where the device sends none.</summary>
    public int LongestInputBytes => _bits.Keys.Where(report => report.Kind == ReportKind.Input).Select(report => BytesOf(report.Kind, report.Id)).DefaultIfEmpty(0).Max();

    /// <summary>Reads a descriptor (USB HID 1.11, section 6.2.2).</summary>
    /// <param name="bytes">The descriptor.</param>
    /// <param name="descriptor">What it says; without fields where something is wrong.</param>
    /// <param name="fault">What is wrong.</param>
    /// <returns>False where something is wrong.</returns>
    public static bool TryParse(ReadOnlySpan<byte> bytes, out ReportDescriptor descriptor, out DescriptorFault fault)
    {
        var reader = new DescriptorReader();
        fault = bytes.Length > LongestBytes ? new(DescriptorFaultKind.TooLarge, LongestBytes) : reader.Read(bytes);
        descriptor = fault.Kind == DescriptorFaultKind.None ? reader.Done() : new([], new Dictionary<(ReportKind, byte), int>(), 0);
        return fault.Kind == DescriptorFaultKind.None;
    }
}
