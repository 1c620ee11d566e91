namespace Handspun.Metrology.Lift;

/// <summary>Why a lift curve is less sure than it looks.</summary>
public enum LiftWarning
{
    /// <summary>Only one turn of the cam, or little more, was seen.</summary>
    OneTurnOnly,

    /// <summary>The angle was told so seldom that the hand's unevenness in between decides.</summary>
    AngleSeldomTold,

    /// <summary>The angle comes from calls of a mark.</summary>
    AngleByHand,

    /// <summary>Several pulses come in a turn and nothing tells which of them is at zero.</summary>
    ZeroNotTold,

    /// <summary>Nobody said whether the angle is of the crank or of the cam, and one lobe alone does not tell; the crank was taken.</summary>
    ShaftAssumed,

    /// <summary>The base circle runs out by more than 0.05 mm.</summary>
    BaseCircleRunsOut,

    /// <summary>Many readings were left out.</summary>
    ManyRejected,

    /// <summary>The two flanks differ: the middle of the lobe is not where its highest point is.</summary>
    LopsidedLobe,
}

/// <summary>Codes and plain sentences for the warnings.</summary>
public static class LiftWarningText
{
    /// <summary>The code in data, such as <c>angle-seldom-told</c>.</summary>
    public static string Code(LiftWarning warning) => warning switch
    {
        LiftWarning.OneTurnOnly => "one-turn-only",
        LiftWarning.AngleSeldomTold => "angle-seldom-told",
        LiftWarning.AngleByHand => "angle-by-hand",
        LiftWarning.ZeroNotTold => "zero-not-told",
        LiftWarning.ShaftAssumed => "angle-shaft-assumed",
        LiftWarning.BaseCircleRunsOut => "base-circle-runs-out",
        LiftWarning.ManyRejected => "many-readings-rejected",
        LiftWarning.LopsidedLobe => "lopsided-lobe",
        _ => throw new ArgumentOutOfRangeException(nameof(warning), warning, "No such warning."),
    };

    /// <summary>One plain sentence for the screen and the record.</summary>
    public static string Sentence(LiftWarning warning) => warning switch
    {
        LiftWarning.OneTurnOnly => "The lobe came by once only; turn on for a second and third look at it.",
        LiftWarning.AngleSeldomTold => "The angle is known at a few places of the turn only; turn slowly and evenly, or use a sensor with more pulses a turn.",
        LiftWarning.AngleByHand => "The angle comes from calls of the mark; a sensor on the shaft would say it far better.",
        LiftWarning.ZeroNotTold => "Several pulses come in a turn and nothing tells which is at zero, so angles count from the first that was seen: take a disc with a missing tooth, or press for the mark each time it passes.",
        LiftWarning.ShaftAssumed => "Nobody said whether the angle is of the crank or of the cam: the crank was taken; say which, or turn until the lobe has come by twice.",
        LiftWarning.BaseCircleRunsOut => "The base circle runs out; check the cam's bearings and that the plunger stands square on a clean tappet.",
        LiftWarning.ManyRejected => "Many readings were left out; check that the stand and the plunger are tight.",
        LiftWarning.LopsidedLobe => "The lobe rises and falls unlike: its middle and its highest point are not at the same angle.",
        _ => throw new ArgumentOutOfRangeException(nameof(warning), warning, "No such warning."),
    };
}
