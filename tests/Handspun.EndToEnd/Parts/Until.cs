namespace Handspun.EndToEnd.Parts;

/// <summary>Waits on conditions, never for a time.</summary>
internal static class Until
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);
    private static readonly TimeSpan Look = TimeSpan.FromMilliseconds(25);

    public static Task TrueAsync(Func<bool> condition, Func<string>? otherwise = null) => TrueAsync(() => Task.FromResult(condition()), otherwise);

    public static async Task TrueAsync(Func<Task<bool>> condition, Func<string>? otherwise = null)
    {
        var started = TimeProvider.System.GetTimestamp();
        while (!await condition())
        {
            if (TimeProvider.System.GetElapsedTime(started) > Patience)
            {
                throw new TimeoutException(otherwise?.Invoke() ?? "The condition did not come true.");
            }

            await Task.Delay(Look, TimeProvider.System);
        }
    }
}
