using Handspun.Gauges.Finding;
using Handspun.Gauges.Tests.Links;

namespace Handspun.Gauges.Tests.Finding;

/// <summary>What is plugged in, by files that stand in for the kernel's. They cannot show what a real node's rights do: the tests run as one who may open all.</summary>
public sealed class PluggedPortsTests : IDisposable
{
    private readonly UsbTree _tree = new();

    public PluggedPortsTests() => Directory.CreateDirectory(_tree.Roots.Devices);

    public void Dispose() => _tree.Dispose();

    [Fact]
    public void Ports_AreNamedByWhatStaysTheSame_WhereThatTellsThemApart()
    {
        _tree.PlugConverter("ttyUSB0", "1-4", "1209", "f00d", "A1", "Bench converter");
        _tree.PlugConverter("ttyUSB1", "1-5", "1209", "beef", null);
        _tree.PlugConverter("ttyUSB2", "1-6", "1209", "beef", null);
        AddNodes("ttyUSB0", "ttyUSB1", "ttyUSB2");

        var ports = new PluggedPorts(_tree.Roots).All();

        Assert.Equal(["usb:1209:F00D:A1", Node("ttyUSB1"), Node("ttyUSB2")], ports.Select(port => port.Port.ToString()));
        Assert.Equal((Node("ttyUSB0"), "Bench converter", true, false, null), (ports[0].Device, ports[0].Title, ports[0].MayOpen, ports[0].IsHid, ports[0].Trouble));
    }

    [Fact]
    public void BuiltInPort_IsListedWhereThereIsAChipBehindIt()
    {
        _tree.AddBuiltIn("ttyS0", type: "4");   // 4: a 16550A, by the kernel's serial_core.h; from memory
        _tree.AddBuiltIn("ttyS1", type: "0");
        AddNodes("ttyS0", "ttyS1");

        Assert.Equal(Node("ttyS0"), Assert.Single(new PluggedPorts(_tree.Roots).All()).Device);
    }

    [Fact]
    public void Port_WithoutANode_SaysWhatToDo()
    {
        _tree.PlugConverter("ttyUSB0", "1-4", "1209", "f00d", "A1");

        var port = Assert.Single(new PluggedPorts(_tree.Roots).All());
        Assert.False(port.MayOpen);
        Assert.Contains("unplug the cable and plug it in again", port.Trouble, StringComparison.Ordinal);
    }

    [Fact]
    public void Port_ThatAnotherProgramHolds_NamesIt()
    {
        _tree.PlugConverter("ttyUSB0", "1-4", "1209", "f00d", "A1");
        AddNodes("ttyUSB0");
        _tree.Run(process: 4711, "terminal", Node("ttyUSB0"), "/elsewhere/file");
        _tree.Run(process: 4712, "idle", "/elsewhere/file");
        _tree.Run(Environment.ProcessId, "this one", Node("ttyUSB0"));

        var port = Assert.Single(new PluggedPorts(_tree.Roots).All());
        Assert.Equal([new PortHolder(4711, "terminal")], port.Holders);
        Assert.Equal("terminal (process 4711)", port.Holders[0].ToString());
    }

    private void AddNodes(params string[] names) => Assert.All(names, name => File.WriteAllText(Node(name), ""));

    private string Node(string name) => Path.Combine(_tree.Roots.Devices, name);
}
