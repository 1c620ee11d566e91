using System.Reflection;

namespace Handspun.Tests.Rooms;

/// <summary>Arrows between rooms point down only.</summary>
public sealed class ArrowTests
{
    private const string Prefix = "Handspun.";

    public static TheoryData<string, string[]> Rooms => new()
    {
        { "Handspun.Metrology", [] },
        { "Handspun.Gauges", [] },
        { "Handspun.Jobs", ["Handspun.Metrology"] },
        { "Handspun.Capture", ["Handspun.Gauges", "Handspun.Jobs", "Handspun.Metrology"] },
        { "Handspun.Pictures", ["Handspun.Jobs", "Handspun.Metrology"] },
    };

    [Theory]
    [MemberData(nameof(Rooms))]
    public void Room_KnowsOnlyTheRoomsBelowIt(string room, string[] below)
    {
        var known = Assembly.Load(room).GetReferencedAssemblies().Select(name => name.Name!).Where(name => name.StartsWith(Prefix, StringComparison.Ordinal));

        Assert.Empty(known.Except(below));
    }

    [Theory]
    [InlineData("Handspun.Metrology", "System.IO.Ports", "Microsoft.EntityFrameworkCore", "Microsoft.Extensions.Logging.Abstractions", "MQTTnet", "Microsoft.AspNetCore")]
    [InlineData("Handspun.Gauges", "Microsoft.EntityFrameworkCore", "MQTTnet", "Microsoft.AspNetCore")]
    [InlineData("Handspun.Jobs", "System.IO.Ports", "MQTTnet", "Microsoft.AspNetCore")]
    [InlineData("Handspun.Capture", "System.IO.Ports", "Microsoft.EntityFrameworkCore", "MQTTnet", "Microsoft.AspNetCore")]
    [InlineData("Handspun.Pictures", "System.IO.Ports", "Microsoft.EntityFrameworkCore", "MQTTnet", "Microsoft.AspNetCore")]
    public void Room_StaysFreeOfWhatIsNotItsBusiness(string room, params string[] others)
    {
        var known = Assembly.Load(room).GetReferencedAssemblies().Select(name => name.Name!).ToList();

        Assert.All(others, other => Assert.DoesNotContain(known, name => name.StartsWith(other, StringComparison.Ordinal)));
    }
}
