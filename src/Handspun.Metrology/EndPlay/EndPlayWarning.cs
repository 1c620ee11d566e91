namespace Handspun.Metrology.EndPlay;

/// <summary>Why an end play is less sure than it looks.</summary>
public enum EndPlayWarning
{
    /// <summary>Fewer cycles than were asked for.</summary>
    FewCycles,

    /// <summary>The cycles do not agree with one another.</summary>
    CyclesDisagree,

    /// <summary>Some pushes or pulls ended short of the stop and were left out.</summary>
    StopMissed,

    /// <summary>Some stops were held for two readings only.</summary>
    ShortHolds,

    /// <summary>Many readings were left out as knocks.</summary>
    ManyRejected,

    /// <summary>The end play is small against the step of the gauge.</summary>
    CoarseResolution,
}

/// <summary>Codes and plain sentences for the warnings.</summary>
public static class EndPlayWarningText
{
    /// <summary>The code in data, such as <c>few-cycles</c>.</summary>
    public static string Code(EndPlayWarning warning) => warning switch
    {
        EndPlayWarning.FewCycles => "few-cycles",
        EndPlayWarning.CyclesDisagree => "cycles-disagree",
        EndPlayWarning.StopMissed => "stop-missed",
        EndPlayWarning.ShortHolds => "short-holds",
        EndPlayWarning.ManyRejected => "many-readings-rejected",
        EndPlayWarning.CoarseResolution => "coarse-resolution",
        _ => throw new ArgumentOutOfRangeException(nameof(warning), warning, "No such warning."),
    };

    /// <summary>One plain sentence for the screen and the record.</summary>
    public static string Sentence(EndPlayWarning warning) => warning switch
    {
        EndPlayWarning.FewCycles => "Fewer pushes and pulls than wanted were seen; repeat for a surer result.",
        EndPlayWarning.CyclesDisagree => "The cycles do not agree; check the stand and hold each stop with the same pressure.",
        EndPlayWarning.StopMissed => "Some pushes or pulls ended short of the stop and were left out.",
        EndPlayWarning.ShortHolds => "Some stops were held too briefly for this gauge; hold each for about a second.",
        EndPlayWarning.ManyRejected => "Many readings were left out; check that the stand and the plunger are tight.",
        EndPlayWarning.CoarseResolution => "The end play is only a few steps of this gauge; a finer gauge would say more.",
        _ => throw new ArgumentOutOfRangeException(nameof(warning), warning, "No such warning."),
    };
}
