namespace Handspun.Metrology.Bore;

/// <summary>Why a bore is less sure than it looks.</summary>
public enum BoreWarning
{
    /// <summary>Fewer passes than were asked for.</summary>
    FewPasses,

    /// <summary>The passes do not agree with one another.</summary>
    PassesDisagree,

    /// <summary>Some rocks turned back before the turning point and were left out.</summary>
    TurnedBackEarly,

    /// <summary>So few readings a pass that the turning point lies between them.</summary>
    FewReadingsPerPass,

    /// <summary>Many readings were left out as knocks.</summary>
    ManyRejected,

    /// <summary>The gauge was rocked so little that the turning point hardly shows in its steps.</summary>
    ShallowRock,

    /// <summary>What the gauge was set to is not known, so there is no size.</summary>
    NoSetting,
}

/// <summary>Codes and plain sentences for the warnings.</summary>
public static class BoreWarningText
{
    /// <summary>The code in data, such as <c>few-passes</c>.</summary>
    public static string Code(BoreWarning warning) => warning switch
    {
        BoreWarning.FewPasses => "few-passes",
        BoreWarning.PassesDisagree => "passes-disagree",
        BoreWarning.TurnedBackEarly => "turned-back-early",
        BoreWarning.FewReadingsPerPass => "few-readings-per-pass",
        BoreWarning.ManyRejected => "many-readings-rejected",
        BoreWarning.ShallowRock => "shallow-rock",
        BoreWarning.NoSetting => "setting-unknown",
        _ => throw new ArgumentOutOfRangeException(nameof(warning), warning, "No such warning."),
    };

    /// <summary>One plain sentence for the screen and the record.</summary>
    /// <param name="warning">The warning.</param>
    /// <param name="outside">Whether it is about a body that is rolled through under a gauge, and not about a bore.</param>
    public static string Sentence(BoreWarning warning, bool outside) => warning switch
    {
        BoreWarning.FewPasses when outside => "Fewer passes through the turning point than wanted were seen; roll the body through again for a surer result.",
        BoreWarning.PassesDisagree when outside => "The passes do not agree; wipe body and table, press the body flat on it and roll evenly.",
        BoreWarning.TurnedBackEarly when outside => "Sometimes the body turned back before its largest size and was left out there.",
        BoreWarning.FewReadingsPerPass when outside => "Few readings a pass; roll slower.",
        BoreWarning.ManyRejected when outside => "Many readings were left out; check that the gauge sits tight in its stand.",
        BoreWarning.ShallowRock when outside => "The body was rolled by a few steps of the display only; roll it a little further each way.",
        BoreWarning.NoSetting when outside => "What the gauge was set to is not known: type the size of the reference to get the body's size.",
        BoreWarning.FewPasses => "Fewer passes through the turning point than wanted were seen; rock again for a surer result.",
        BoreWarning.PassesDisagree => "The passes do not agree; seat the gauge's centring shoe well and rock evenly.",
        BoreWarning.TurnedBackEarly => "Some rocks turned back before the turning point and were left out.",
        BoreWarning.FewReadingsPerPass => "Few readings a pass; rock slower.",
        BoreWarning.ManyRejected => "Many readings were left out; check that the indicator sits tight in the gauge.",
        BoreWarning.ShallowRock => "The gauge was rocked by a few steps of its display only; rock a little further each way.",
        BoreWarning.NoSetting => "What the gauge was set to is not known: type the ring's or micrometer's size to get the bore's size.",
        _ => throw new ArgumentOutOfRangeException(nameof(warning), warning, "No such warning."),
    };
}
