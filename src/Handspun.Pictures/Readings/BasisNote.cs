namespace Handspun.Pictures.Readings;

/// <summary>The note at the foot of a picture that says what the result rests on.</summary>
internal static class BasisNote
{
    /// <summary>Such as <c>3 cycles · 6 holds · 412 readings · 1 knock left out · ± is the expanded uncertainty, k = 2.</c></summary>
    public static string Basis((int Count, string What) strokes, (int Count, string What)? rests, (int Count, string What) readings, int knocks, string? aside, bool hasDoubt)
    {
        List<string> parts = [];
        if (strokes.Count > 0)
        {
            parts.Add(Counted(strokes.Count, strokes.What));
        }

        if (rests is { Count: > 0 } told)
        {
            parts.Add(Counted(told.Count, told.What));
        }

        parts.Add(Counted(readings.Count, readings.What));
        parts.Add(knocks == 0 ? "no reading left out" : $"{Counted(knocks, "knock")} left out");
        if (aside is not null)
        {
            parts.Add(aside);
        }

        if (hasDoubt)
        {
            parts.Add("\u00b1 is the expanded uncertainty, k = 2");
        }

        return $"{string.Join(" · ", parts)}.";
    }

    /// <summary>A number of things: <c>1 cycle</c>, <c>3 cycles</c>, <c>2 passes</c>.</summary>
    public static string Counted(int count, string what) => $"{count} {(count == 1 ? what : what + (what.EndsWith('s') ? "es" : "s"))}";
}
