namespace Handspun.Gauges.Tests.Links;

/// <summary>Waits for what another thread or process does.</summary>
internal static class Until
{
    /// <summary>So long nothing takes that works.</summary>
    public static readonly TimeSpan Cap = TimeSpan.FromSeconds(60);

    /// <summary>Waits until it is so.</summary>
    public static Task TrueAsync(Func<bool> condition) => TrueAsync(condition, () => { });

    /// <summary>Waits until it is so, and does something each time that it is not.</summary>
    public static async Task TrueAsync(Func<bool> condition, Action otherwise)
    {
        using var cap = new CancellationTokenSource(Cap);
        while (!condition())
        {
            Assert.False(cap.IsCancellationRequested, "what was waited for never came");
            otherwise();
            await Task.Delay(TimeSpan.FromMilliseconds(1), TimeProvider.System);
        }
    }
}
