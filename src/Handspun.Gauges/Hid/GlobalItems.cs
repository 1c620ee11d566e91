namespace Handspun.Gauges.Hid;

/// <summary>What holds for all fields until it is said anew (USB HID 1.11, section 6.2.2.7).</summary>
internal record struct GlobalItems
{
    public ushort UsagePage;
    public uint Unit;
    public int UnitExponent;
    public uint ReportSize;
    public uint ReportCount;
    public byte ReportId;
    public Extents Logical;
    public Extents Physical;

    /// <summary>Takes an item.</summary>
    /// <returns>False where it is no global item that says something of fields.</returns>
    public bool Take(DescriptorItem item)
    {
        switch (item.Prefix)
        {
            case 0x04: UsagePage = (ushort)item.Data; return true;
            case 0x14: Logical.Least = item; return true;
            case 0x24: Logical.Most = item; return true;
            case 0x34: Physical.Least = item; return true;
            case 0x44: Physical.Most = item; return true;
            case 0x54: UnitExponent = HidUnit.ExponentOf(item.Signed); return true;
            case 0x64: Unit = item.Data; return true;
            case 0x74: ReportSize = item.Data; return true;
            case 0x94: ReportCount = item.Data; return true;
            default: return false;
        }
    }
}

/// <summary>The smallest and the largest value of a field.</summary>
/// <remarks>
/// Both are signed by the size of their data. But a great many devices write a largest value of 255 or 65535 in one or two
/// bytes; where the smallest is not below 0, a largest value below it has no other meaning.
/// </remarks>
internal record struct Extents
{
    public DescriptorItem Least;
    public DescriptorItem Most;

    public readonly long Minimum => Least.Signed;

    public readonly long Maximum => Minimum < 0 ? Most.Signed : Most.Data;

    public readonly bool AreBothZero => Minimum == 0 && Maximum == 0;
}
