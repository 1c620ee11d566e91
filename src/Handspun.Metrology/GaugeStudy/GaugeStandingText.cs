namespace Handspun.Metrology.GaugeStudy;

/// <summary>Codes and plain sentences for where a gauge stands.</summary>
public static class GaugeStandingText
{
    /// <summary>The code in data, such as <c>overdue</c>.</summary>
    public static string Code(GaugeStanding standing) => standing switch
    {
        GaugeStanding.Good => "good",
        GaugeStanding.Undecided => "undecided",
        GaugeStanding.Failed => "failed",
        GaugeStanding.Overdue => "overdue",
        _ => throw new ArgumentOutOfRangeException(nameof(standing), standing, "No such standing."),
    };

    /// <summary>The standing of a code.</summary>
    /// <exception cref="FormatException">There is no such code.</exception>
    public static GaugeStanding Read(string code)
    {
        foreach (var standing in Enum.GetValues<GaugeStanding>())
        {
            if (Code(standing) == code)
            {
                return standing;
            }
        }

        throw new FormatException($"There is no standing of a gauge called '{code}'.");
    }

    /// <summary>One plain sentence for the screen and the record.</summary>
    public static string Sentence(GaugeStanding standing) => standing switch
    {
        GaugeStanding.Good => "The gauge was within its error limit when it was last checked.",
        GaugeStanding.Undecided => "The gauge's error is too close to its limit to call; check it again with more readings or a surer block.",
        GaugeStanding.Failed => "The gauge is beyond its error limit; measure with another one, and have this one looked after.",
        GaugeStanding.Overdue => "The gauge is due for a check; check it against a block or ring before the job.",
        _ => throw new ArgumentOutOfRangeException(nameof(standing), standing, "No such standing."),
    };
}
