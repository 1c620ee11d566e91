namespace Handspun.Gauges.Hid;

/// <summary>What holds for the next main item only: its usages (USB HID 1.11, section 6.2.2.8).</summary>
internal sealed class LocalItems
{
    private readonly record struct Named(uint First, uint Last, bool HasPage);

    private readonly List<Named> _named = [];
    private DescriptorItem? _minimum;
    private DescriptorItem? _maximum;
    private bool _inAlternatives;
    private bool _alternativeTaken;

    public void Clear()
    {
        _named.Clear();
        (_minimum, _maximum) = (null, null);
        (_inAlternatives, _alternativeTaken) = (false, false);
    }

    public void Take(DescriptorItem item)
    {
        switch (item.Prefix)
        {
            case 0x08:
                Add(item, item);
                break;
            case 0x18:
                _minimum = item;
                break;
            case 0x28:
                _maximum = item;
                break;
            case 0xA8:   // a delimiter: of the usages up to the closing one, the first is the one that the device means most
                _inAlternatives = item.Data == 1;
                _alternativeTaken = false;
                return;
            default:
                return;
        }

        if (_minimum is { } minimum && _maximum is { } maximum)
        {
            Add(minimum, maximum);
            (_minimum, _maximum) = (null, null);
        }
    }

    /// <summary>The usages, each completed by the page that was named last where it names none itself.</summary>
    public IReadOnlyList<HidUsageRange> Usages(ushort page) => [.. _named.Select(named => named.HasPage
        ? new HidUsageRange(HidUsage.FromExtended(named.First), (ushort)named.Last)
        : new HidUsageRange(new(page, (ushort)named.First), (ushort)named.Last))];

    private void Add(DescriptorItem first, DescriptorItem last)
    {
        if (_inAlternatives && _alternativeTaken)
        {
            return;
        }

        _alternativeTaken = true;
        var hasPage = first.Size == 4 || last.Size == 4;
        var onePage = !hasPage || first.Data >> 16 == last.Data >> 16;
        if (onePage && first.Data <= last.Data)
        {
            _named.Add(new(first.Data, last.Data, hasPage));
        }
    }
}
