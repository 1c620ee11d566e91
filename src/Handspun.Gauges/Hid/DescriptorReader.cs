namespace Handspun.Gauges.Hid;

/// <summary>Goes through the items of a report descriptor and lays its fields side by side.</summary>
/// <remarks>A descriptor comes from whatever was plugged in, so every size in it has a bound.</remarks>
internal sealed class DescriptorReader
{
    private const int DeepestStack = 64;
    private const int MostFields = 8192;
    private const int MostReportBits = 16384 * 8;   // the longest report that Linux passes on (from memory)
    private const uint Application = 1;

    private readonly List<ReportField> _fields = [];
    private readonly Dictionary<(ReportKind Kind, byte Id), int> _bits = [];
    private readonly Stack<GlobalItems> _pushed = [];
    private readonly Stack<HidUsage> _collections = [];
    private readonly LocalItems _local = new();
    private GlobalItems _global;
    private int _items;

    public ReportDescriptor Done() => new(_fields, _bits, _items);

    public DescriptorFault Read(ReadOnlySpan<byte> bytes)
    {
        var left = bytes;
        while (!left.IsEmpty)
        {
            var position = bytes.Length - left.Length;
            var fault = DescriptorItem.TryTake(ref left, out var item) ? Take(item) : DescriptorFaultKind.Truncated;
            if (fault != DescriptorFaultKind.None)
            {
                return new(fault, position);
            }

            _items++;
        }

        return new(_collections.Count > 0 ? DescriptorFaultKind.UnbalancedCollection : DescriptorFaultKind.None, bytes.Length);
    }

    private DescriptorFaultKind Take(DescriptorItem item)
    {
        const byte type = 0x0C;
        const byte main = 0x00;
        const byte local = 0x08;
        switch (item.Prefix)
        {
            case 0x84:
                _global.ReportId = (byte)item.Data;
                return item.Data is >= 1 and <= 255 ? DescriptorFaultKind.None : DescriptorFaultKind.BadReportId;
            case 0xA4:
                _pushed.Push(_global);
                return _pushed.Count > DeepestStack ? DescriptorFaultKind.TooLarge : DescriptorFaultKind.None;
            case 0xB4:
                return _pushed.TryPop(out _global) ? DescriptorFaultKind.None : DescriptorFaultKind.UnbalancedPop;
        }

        if (_global.Take(item))
        {
            return DescriptorFaultKind.None;
        }

        if ((item.Prefix & type) == local)
        {
            _local.Take(item);
            return DescriptorFaultKind.None;
        }

        if ((item.Prefix & type) != main)
        {
            return DescriptorFaultKind.None;   // reserved, or a long item: passed over, as the standard asks
        }

        var fault = TakeMain(item);
        _local.Clear();
        return fault;
    }

    private DescriptorFaultKind TakeMain(DescriptorItem item)
    {
        switch (item.Prefix)
        {
            case 0x80:
                return Lay(ReportKind.Input, item.Data);
            case 0x90:
                return Lay(ReportKind.Output, item.Data);
            case 0xB0:
                return Lay(ReportKind.Feature, item.Data);
            case 0xA0:
                var usages = _local.Usages(_global.UsagePage);
                _collections.Push(item.Data == Application && usages.Count > 0 ? usages[0].First : _collections.TryPeek(out var outer) ? outer : default);
                return _collections.Count > DeepestStack ? DescriptorFaultKind.TooLarge : DescriptorFaultKind.None;
            case 0xC0:
                return _collections.TryPop(out _) ? DescriptorFaultKind.None : DescriptorFaultKind.UnbalancedCollection;
            default:
                return DescriptorFaultKind.None;
        }
    }

    private DescriptorFaultKind Lay(ReportKind kind, uint flags)
    {
        const uint constant = 1;
        const uint variable = 2;
        var report = (kind, _global.ReportId);
        var start = _bits.GetValueOrDefault(report);
        var width = (ulong)_global.ReportSize * _global.ReportCount;
        if (width > (ulong)(MostReportBits - start))
        {
            return DescriptorFaultKind.TooLarge;
        }

        _bits[report] = start + (int)width;
        if ((flags & constant) != 0 || width == 0 || _global.ReportSize > 32)
        {
            return DescriptorFaultKind.None;   // padding, or wider than a value may be
        }

        var isArray = (flags & variable) == 0;
        if (_fields.Count + (isArray ? 1 : _global.ReportCount) > MostFields)
        {
            return DescriptorFaultKind.TooLarge;
        }

        var field = FieldOf(kind, flags) with { BitOffset = start, Usages = _local.Usages(_global.UsagePage) };
        if (isArray)
        {
            _fields.Add(field with { IsArray = true, Count = (int)_global.ReportCount });
        }
        else
        {
            LayOneByOne(field);
        }

        return DescriptorFaultKind.None;
    }

    // Where there are more values than usages, the last usage stands for all that are left (6.2.2.8).
    private void LayOneByOne(ReportField all)
    {
        var (range, place) = (0, 0);
        for (var i = 0; i < _global.ReportCount; i++)
        {
            var usage = all.Usages.Count > 0 ? all.Usages[range].At(place) : default;
            _fields.Add(all with { BitOffset = all.BitOffset + i * all.BitSize, Usages = [new(usage, usage.Id)] });
            if (all.Usages.Count == 0)
            {
                continue;
            }

            if (place < all.Usages[range].Count - 1)
            {
                place++;
            }
            else if (range < all.Usages.Count - 1)
            {
                (range, place) = (range + 1, 0);
            }
        }
    }

    private ReportField FieldOf(ReportKind kind, uint flags)
    {
        const uint relative = 4;
        // Undefined physical extents are the logical ones; devices that say 0 and 0 mean that too (6.2.2.7).
        var physical = _global.Physical.AreBothZero ? _global.Logical : _global.Physical;
        return new ReportField
        {
            Kind = kind,
            ReportId = _global.ReportId,
            BitOffset = 0,
            BitSize = (int)_global.ReportSize,
            Usages = [],
            Application = _collections.TryPeek(out var application) ? application : default,
            IsRelative = (flags & relative) != 0,
            LogicalMinimum = _global.Logical.Minimum,
            LogicalMaximum = _global.Logical.Maximum,
            PhysicalMinimum = physical.Minimum,
            PhysicalMaximum = physical.Maximum,
            Unit = new(_global.Unit),
            UnitExponent = _global.UnitExponent,
        };
    }
}
