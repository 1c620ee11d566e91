namespace Handspun.Metrology.Runout;

/// <summary>Why a runout is less sure than it looks.</summary>
public enum RunoutWarning
{
    /// <summary>Fewer turns than were asked for.</summary>
    FewTurns,

    /// <summary>So few readings a turn that a peak between two of them could be missed.</summary>
    FewReadingsPerTurn,

    /// <summary>Nothing tells where zero degrees is, so the high spot's angle means nothing outside this capture.</summary>
    NoReference,

    /// <summary>Many readings were left out.</summary>
    ManyRejected,

    /// <summary>The runout is small against the step of the gauge.</summary>
    CoarseResolution,

    /// <summary>The turns do not agree with one another.</summary>
    TurnsDisagree,

    /// <summary>The shape repeats within a turn, so the turns may have been counted double or half.</summary>
    TurnCountAmbiguous,

    /// <summary>Index pulses were missed or came twice, and were counted anew from the readings.</summary>
    IndexDoubtful,

    /// <summary>The shaft seems to have been turned back on the way.</summary>
    BackwardsSuspected,

    /// <summary>The shaft turns faster than this gauge can follow; told while it turns.</summary>
    TurningTooFast,

    /// <summary>A narrow place stands out at the same angle every turn.</summary>
    LocalFault,
}

/// <summary>Codes and plain sentences for the warnings.</summary>
public static class RunoutWarningText
{
    /// <summary>The code in data, such as <c>few-turns</c>.</summary>
    public static string Code(RunoutWarning warning) => warning switch
    {
        RunoutWarning.FewTurns => "few-turns",
        RunoutWarning.FewReadingsPerTurn => "few-readings-per-turn",
        RunoutWarning.NoReference => "no-angle-reference",
        RunoutWarning.ManyRejected => "many-readings-rejected",
        RunoutWarning.CoarseResolution => "coarse-resolution",
        RunoutWarning.TurnsDisagree => "turns-disagree",
        RunoutWarning.TurnCountAmbiguous => "turn-count-ambiguous",
        RunoutWarning.IndexDoubtful => "index-doubtful",
        RunoutWarning.BackwardsSuspected => "backwards-suspected",
        RunoutWarning.TurningTooFast => "turning-too-fast",
        RunoutWarning.LocalFault => "local-fault",
        _ => throw new ArgumentOutOfRangeException(nameof(warning), warning, "No such warning."),
    };

    /// <summary>One plain sentence for the screen and the record.</summary>
    public static string Sentence(RunoutWarning warning) => warning switch
    {
        RunoutWarning.FewTurns => "Fewer turns than wanted were seen; turn again for a surer result.",
        RunoutWarning.FewReadingsPerTurn => "Few readings a turn: a narrow peak could hide between them; turn slower.",
        RunoutWarning.NoReference => "No index or mark: the high spot's angle counts from the first reading only, and turns are counted by what repeats.",
        RunoutWarning.ManyRejected => "Many readings were left out; check that the stand and the plunger are tight.",
        RunoutWarning.CoarseResolution => "The runout is only a few steps of this gauge; a finer gauge would say more.",
        RunoutWarning.TurnsDisagree => "The turns do not agree; check the stand, the plunger and the shaft's end play.",
        RunoutWarning.TurnCountAmbiguous => "The shape repeats within a turn: the count of turns may be double or half.",
        RunoutWarning.LocalFault => "A narrow place stands out at the same angle every turn; it is told apart and is no part of the runout.",
        RunoutWarning.BackwardsSuspected => "The shaft seems to have been turned back on the way; turn one way only, to the end.",
        RunoutWarning.TurningTooFast => "The shaft turns too fast for this gauge: what lies between two readings is not seen.",
        RunoutWarning.IndexDoubtful => "Index pulses were missed or came twice; check the sensor's gap and wiring.",
        _ => throw new ArgumentOutOfRangeException(nameof(warning), warning, "No such warning."),
    };
}
