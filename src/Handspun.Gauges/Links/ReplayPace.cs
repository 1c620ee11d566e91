using System.Globalization;

namespace Handspun.Gauges.Links;

/// <summary>How fast a journal is replayed. Stands before the file's name: nothing for its own pace, <c>x4:</c> for four times that, <c>at-once:</c> for no waiting.</summary>
public readonly record struct ReplayPace
{
    private const string NoWaiting = "at-once:";
    private const double Fastest = 1000;

    // 0 is the own pace, so that a pace that nobody set is a sensible one.
    private readonly double _faster;

    private ReplayPace(double faster) => _faster = faster;

    /// <summary>As it once came.</summary>
    public static ReplayPace Own => default;

    /// <summary>Without waiting.</summary>
    public static ReplayPace AtOnce { get; } = new(double.PositiveInfinity);

    /// <summary>So many times as fast as it once came.</summary>
    /// <param name="times">Above 0, up to 1000; below 1 is slower.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is not.</exception>
    public static ReplayPace Times(double times) => times is > 0 and <= Fastest
        ? new(times == 1 ? 0 : times)
        : throw new ArgumentOutOfRangeException(nameof(times), times, "A pace is above 0 and up to 1000.");

    /// <summary>What a stretch of the journal's time takes.</summary>
    public TimeSpan Take(TimeSpan stretch) => _faster switch
    {
        0 => stretch,
        double.PositiveInfinity => TimeSpan.Zero,
        _ => stretch / _faster,
    };

    /// <summary>Takes a pace off the front of a replay's address.</summary>
    /// <returns>False where there is no file's name, or a pace that cannot be.</returns>
    internal static bool TryTake(string text, out ReplayPace pace, out string file)
    {
        (pace, file) = (Own, text);
        if (text.StartsWith(NoWaiting, StringComparison.OrdinalIgnoreCase))
        {
            (pace, file) = (AtOnce, text[NoWaiting.Length..]);
        }
        else if (text is ['x' or 'X', >= '0' and <= '9', ..] && text.IndexOf(':', StringComparison.Ordinal) is > 0 and var colon)
        {
            if (!double.TryParse(text.AsSpan(1, colon - 1), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var times) || times is not (> 0 and <= Fastest))
            {
                return false;
            }

            (pace, file) = (Times(times), text[(colon + 1)..]);
        }

        return !string.IsNullOrWhiteSpace(file);
    }

    /// <inheritdoc/>
    public override string ToString() => _faster switch
    {
        0 => "",
        double.PositiveInfinity => NoWaiting,
        _ => string.Create(CultureInfo.InvariantCulture, $"x{_faster}:"),
    };
}
