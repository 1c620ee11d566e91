using Handspun.Jobs.ShopGauges;

namespace Handspun.Jobs.Tests.ShopGauges;

/// <summary>Checks to test with.</summary>
internal static class SampleChecks
{
    public static DateOnly Today { get; } = new(2026, 3, 14);

    /// <summary>Five readings on a block of 5 mm that is 0.1 µm short, known to 0.2 µm; the gauge reads 1 µm more.</summary>
    public static CheckSheet Sheet { get; } = new()
    {
        By = "A. Nobody",
        Against = "gauge block 5 mm, certificate 17",
        SizeMillimetres = 5,
        DeviationMillimetres = -0.0001,
        SizeU95Millimetres = 0.0002,
        ReadingsMillimetres = [5.001, 5.001, 5.000, 5.001, 5.001],
        ResolutionMillimetres = 0.001,
        ErrorLimitMillimetres = 0.004,
    };

    public static LastCheck Last(string found = "good", double error = 0.0009) => new()
    {
        At = new DateTimeOffset(2026, 3, 14, 9, 0, 0, TimeSpan.Zero),
        DueOn = new DateOnly(2027, 3, 14),
        By = "A. Nobody",
        Against = "gauge block 5 mm, certificate 17",
        ErrorMillimetres = error,
        ErrorU95Millimetres = 0.0008,
        Found = found,
    };
}
