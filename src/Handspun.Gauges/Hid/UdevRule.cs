using System.Globalization;
using Handspun.Gauges.Links;

namespace Handspun.Gauges.Hid;

/// <summary>The line by which a Linux system lets its users read a HID gauge.</summary>
/// <remarks>
/// The group is the one that most systems use for serial ports, so that one membership serves for both kinds of gauge; the
/// tag gives the right to whoever sits at the machine (common practice, no source).
/// </remarks>
public static class UdevRule
{
    /// <summary>The file into which it goes.</summary>
    public const string File = "/etc/udev/rules.d/70-workshop-gauges.rules";

    /// <summary>The line for a kind of device.</summary>
    public static string For(UsbIdentity identity) => string.Create(
        CultureInfo.InvariantCulture,
        $"SUBSYSTEM==\"hidraw\", ATTRS{{idVendor}}==\"{identity.Vendor:x4}\", ATTRS{{idProduct}}==\"{identity.Product:x4}\", MODE=\"0660\", GROUP=\"dialout\", TAG+=\"uaccess\"");
}
