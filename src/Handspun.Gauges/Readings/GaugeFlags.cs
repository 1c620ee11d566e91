using System.Diagnostics.CodeAnalysis;

namespace Handspun.Gauges.Readings;

/// <summary>What a gauge says of itself beside the value.</summary>
[Flags]
[SuppressMessage("Naming", "CA1711", Justification = "Flags is the trade's word for them.")]
public enum GaugeFlags
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>Its battery is nearly empty.</summary>
    BatteryLow = 1,

    /// <summary>Its display is held: the value does not follow the plunger.</summary>
    Hold = 2,

    /// <summary>It says that something is wrong with it.</summary>
    Alarm = 4,

    /// <summary>The plunger is beyond what it can measure: there is no value.</summary>
    Overrange = 8,

    /// <summary>It was set to count in the other direction.</summary>
    Reversed = 16,
}
