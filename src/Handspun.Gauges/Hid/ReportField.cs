namespace Handspun.Gauges.Hid;

/// <summary>Which way a report goes.</summary>
public enum ReportKind
{
    /// <summary>From the device.</summary>
    Input,

    /// <summary>To the device.</summary>
    Output,

    /// <summary>A setting, read or written on request.</summary>
    Feature,
}

/// <summary>One field of a report, as the report descriptor gives it; padding is no field.</summary>
public sealed record ReportField
{
    /// <summary>Which way its report goes.</summary>
    public required ReportKind Kind { get; init; }

    /// <summary>The number of its report, 1 to 255, which is then the report's first byte; 0 where reports have no number.</summary>
    public required byte ReportId { get; init; }

    /// <summary>Its first bit, counted from 0 after the report's number; bit 0 is the lowest of the first byte.</summary>
    public required int BitOffset { get; init; }

    /// <summary>Bits of one value, 1 to 32.</summary>
    public required int BitSize { get; init; }

    /// <summary>Values that lie side by side: 1, or the slots of an array.</summary>
    public int Count { get; init; } = 1;

    /// <summary>What it stands for; for an array, all that a slot may name: its value is a place in this list, counted from <see cref="LogicalMinimum"/>.</summary>
    public required IReadOnlyList<HidUsageRange> Usages { get; init; }

    /// <summary>The usage of the application collection around it: what the device is there.</summary>
    public HidUsage Application { get; init; }

    /// <summary>Whether each slot names a usage instead of carrying a value.</summary>
    public bool IsArray { get; init; }

    /// <summary>Whether the value is a change since the last report.</summary>
    public bool IsRelative { get; init; }

    /// <summary>The smallest value in counts; the field is signed where it is below 0.</summary>
    public required long LogicalMinimum { get; init; }

    /// <summary>The largest value in counts. A value outside of the two stands for none.</summary>
    public required long LogicalMaximum { get; init; }

    /// <summary>What the smallest value stands for, in powers of ten of the unit.</summary>
    public required long PhysicalMinimum { get; init; }

    /// <summary>What the largest value stands for, in powers of ten of the unit.</summary>
    public required long PhysicalMaximum { get; init; }

    /// <summary>The unit.</summary>
    public HidUnit Unit { get; init; }

    /// <summary>The power of ten of the unit.</summary>
    public int UnitExponent { get; init; }

    /// <summary>What it stands for where it is no array.</summary>
    public HidUsage Usage => Usages.Count > 0 ? Usages[0].First : default;

    /// <summary>Whether its values are two's complement (USB HID 1.11, section 6.2.2.7: where an extent is below 0).</summary>
    public bool IsSigned => LogicalMinimum < 0;

    /// <summary>The place of the usage in an array's list; -1 where it is not in it.</summary>
    public long PlaceOf(HidUsage usage)
    {
        var before = 0L;
        foreach (var range in Usages)
        {
            if (range.First.Page == usage.Page && usage.Id >= range.First.Id && usage.Id <= range.Last)
            {
                return before + usage.Id - range.First.Id;
            }

            before += range.Count;
        }

        return -1;
    }
}
