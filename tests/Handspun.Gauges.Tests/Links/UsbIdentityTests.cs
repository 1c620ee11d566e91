using Handspun.Gauges.Links;

namespace Handspun.Gauges.Tests.Links;

public class UsbIdentityTests
{
    private static readonly UsbIdentity Device = new(0x12AB, 0x00CD, "A7");

    [Fact]
    public void Identity_WithoutASerialNumber_FitsEveryDeviceOfTheKind()
    {
        var any = new UsbIdentity(0x12AB, 0x00CD);

        Assert.True(any.Fits(Device));
        Assert.True(any.Fits(Device with { Serial = "B8" }));
        Assert.True(any.Fits(Device with { Serial = null }));
    }

    [Fact]
    public void Identity_WithASerialNumber_FitsThatDeviceOnly()
    {
        Assert.True(Device.Fits(Device));
        Assert.False(Device.Fits(Device with { Serial = "a7" }));
        Assert.False(Device.Fits(Device with { Serial = null }));
        Assert.False(Device.Fits(Device with { Vendor = 0x12AC }));
        Assert.False(Device.Fits(Device with { Product = 0x00CE }));
    }
}
