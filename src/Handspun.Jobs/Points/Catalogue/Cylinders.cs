namespace Handspun.Jobs.Points.Catalogue;

/// <summary>The four valve trains of an engine with two cylinders and two valves each.</summary>
internal static class Cylinders
{
    /// <summary>One point for each: <paramref name="make"/> is given the end of the code and that of the title.</summary>
    public static IEnumerable<MeasuringPoint> Each(Func<string, string, MeasuringPoint> make) =>
        new[] { ("front-intake", "front intake"), ("front-exhaust", "front exhaust"), ("rear-intake", "rear intake"), ("rear-exhaust", "rear exhaust") }
            .Select(valve => make(valve.Item1, valve.Item2));
}
