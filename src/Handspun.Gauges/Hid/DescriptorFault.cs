using System.Globalization;

namespace Handspun.Gauges.Hid;

/// <summary>What is wrong with a report descriptor.</summary>
public enum DescriptorFaultKind
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>An item is longer than what is left.</summary>
    Truncated,

    /// <summary>A collection ends that did not begin, or does not end.</summary>
    UnbalancedCollection,

    /// <summary>A pop without a push.</summary>
    UnbalancedPop,

    /// <summary>A report number that is not 1 to 255.</summary>
    BadReportId,

    /// <summary>Deeper, longer or with more fields than any device.</summary>
    TooLarge,
}

/// <summary>What is wrong with a report descriptor, and where.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Position">The byte, from 0, at which the item begins.</param>
public readonly record struct DescriptorFault(DescriptorFaultKind Kind, int Position)
{
    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Kind switch
    {
        DescriptorFaultKind.None => "nothing is wrong",
        DescriptorFaultKind.Truncated => "an item is cut off",
        DescriptorFaultKind.UnbalancedCollection => "a collection begins without an end or ends without a beginning",
        DescriptorFaultKind.UnbalancedPop => "a pop has no push",
        DescriptorFaultKind.BadReportId => "a report number is not 1 to 255",
        _ => "it describes more than any device has",
    }} at byte {Position}");
}
