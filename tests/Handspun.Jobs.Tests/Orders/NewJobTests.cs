using Handspun.Jobs.Orders;
using Handspun.Jobs.Tests.Store;

namespace Handspun.Jobs.Tests.Orders;

public class NewJobTests
{
    private const int ThisYear = 2026;

    [Fact]
    public void Order_WithAllThatIsNeeded_HasNoProblems()
    {
        Assert.Empty(StoreBench.Order.Problems(ThisYear));
        Assert.Empty((StoreBench.Order with { Vin = " 1AB23CD45EF678901 ", Odometer = 0, Customer = "A. Nobody", Year = ThisYear + 1 }).Problems(ThisYear));
    }

    [Fact]
    public void Order_OfNothing_HasAProblemForEachFieldThatIsNeeded()
    {
        var problems = new NewJob { Title = "  " }.Problems(ThisYear);

        Assert.Equal(["make", "model", "title", "year"], problems.Keys.Order());
        Assert.Equal("Give the model year, 1885 to 2027.", problems["year"]);
        Assert.All(problems.Values, problem => Assert.Matches("^[A-Z].*\\.$", problem));
    }

    public static TheoryData<string, NewJob> Wrong => new()
    {
        { "make", StoreBench.Order with { Make = new string('x', 121) } },
        { "model", StoreBench.Order with { Model = "\t" } },
        { "title", StoreBench.Order with { Title = new string('x', 121) } },
        { "customer", StoreBench.Order with { Customer = new string('x', 121) } },
        { "year", StoreBench.Order with { Year = 1884 } },
        { "year", StoreBench.Order with { Year = ThisYear + 2 } },
        { "odometer", StoreBench.Order with { Odometer = -1 } },
        { "odometer", StoreBench.Order with { Odometer = 10_000_000 } },
        { "vin", StoreBench.Order with { Vin = "AB 1234567" } },
        { "vin", StoreBench.Order with { Vin = "AB" } },
        { "vin", StoreBench.Order with { Vin = "1AB23CD45EF6789012" } },   // 18 characters; ISO 3779 has 17
        { "vin", StoreBench.Order with { Vin = "AB-1234" } },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void Order_WithOneFieldWrong_NamesThatField(string field, NewJob order) =>
        Assert.Equal([field], order.Problems(ThisYear).Keys);

    [Fact]
    public void Text_OfJustTheLongestLength_IsGood() =>
        Assert.Empty((StoreBench.Order with { Customer = $"  {new string('x', 120)}  " }).Problems(ThisYear));
}
