namespace Handspun.Gauges.Hid;

/// <summary>Where a keyboard's report has its keys: in slots that each name a key that is down, or as one bit for each key.</summary>
public sealed class KeyboardReport
{
    private const int FirstModifier = 0xE0;

    private readonly FieldPlace[] _slots;
    private readonly HidUsageRange[] _keys;
    private readonly long _least;
    private readonly (byte Key, FieldPlace Place)[] _bits;

    // In a slot, the count is a place in the list of keys.
    private KeyboardReport(byte reportId, FieldPlace[] slots, HidUsageRange[] keys, long least, (byte Key, FieldPlace Place)[] bits) =>
        (ReportId, _slots, _keys, _least, _bits) = (reportId, slots, keys, least, bits);

    /// <summary>The report that every keyboard has before it was asked for another: modifiers, a byte of nothing, six keys (USB HID 1.11, appendix B.1).</summary>
    public static KeyboardReport Boot { get; } = new(
        0,
        [.. Enumerable.Range(2, 6).Select(place => new FieldPlace(0, 8 * place, 8, false))],
        [new(new(HidUsage.KeyboardPage, 0), byte.MaxValue)],
        0,
        [.. Enumerable.Range(0, 8).Select(bit => ((byte)(FirstModifier + bit), new FieldPlace(0, bit, 1, false)))]);

    /// <summary>The report's number; 0 where reports have none.</summary>
    public byte ReportId { get; }

    /// <summary>Finds the keys in what a device says of its reports: the first report that has keys beside modifiers.</summary>
    public static bool TryFind(ReportDescriptor descriptor, out KeyboardReport report)
    {
        var keys = descriptor.Fields
            .Where(field => field.Kind == ReportKind.Input && field.Usages.Count > 0 && field.Usages.All(range => range.First.Page == HidUsage.KeyboardPage))
            .ToLookup(field => field.ReportId);
        foreach (var group in keys.Where(group => group.Any(field => field.IsArray || field.Usage.Id < FirstModifier)))
        {
            var array = group.FirstOrDefault(field => field.IsArray);
            report = new(
                group.Key,
                array is null ? [] : [.. Enumerable.Range(0, array.Count).Select(slot => FieldPlace.Of(array, slot))],
                [.. array?.Usages ?? []],
                array?.LogicalMinimum ?? 0,
                [.. group.Where(field => !field.IsArray && field.Usage.Id <= byte.MaxValue).Select(field => ((byte)field.Usage.Id, FieldPlace.Of(field)))]);
            return true;
        }

        report = Boot;
        return false;
    }

    /// <summary>Reads which keys are down.</summary>
    /// <param name="report">The report as it was read.</param>
    /// <param name="down">Gets the keys, modifiers too.</param>
    /// <param name="order">Gets the keys other than modifiers, in the order of the report; room for 256.</param>
    /// <returns>How many of those there are; below 0 where the report says that it could not tell, or is another one.</returns>
    public int Read(ReadOnlySpan<byte> report, ref KeySet down, Span<byte> order)
    {
        const long firstKey = 4;   // 1 to 3 say that too many keys are down or that the keyboard is ill
        var count = 0;
        if (report.IsEmpty || (ReportId != 0 && report[0] != ReportId))
        {
            return -1;
        }

        foreach (var place in _slots)
        {
            var key = place.TryRead(report, out var counts) ? KeyOf(counts) : 0;
            if (key is > 0 and < firstKey)
            {
                return -1;
            }

            if (key != 0 && down.Add((byte)key) && key < FirstModifier)
            {
                order[count++] = (byte)key;
            }
        }

        foreach (var (key, place) in _bits)
        {
            if (place.TryRead(report, out var pressed) && pressed != 0 && key >= firstKey && down.Add(key) && key < FirstModifier)
            {
                order[count++] = key;
            }
        }

        return count;
    }

    private long KeyOf(long counts)
    {
        var place = counts - _least;
        foreach (var keys in _keys)
        {
            if (place >= 0 && place < keys.Count)
            {
                return Math.Min(keys.First.Id + place, byte.MaxValue);
            }

            place -= keys.Count;
        }

        return 0;
    }
}
