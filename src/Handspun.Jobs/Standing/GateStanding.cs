using Handspun.Jobs.Book;

namespace Handspun.Jobs.Standing;

/// <summary>Why a gate is open or shut.</summary>
public enum GateReason
{
    /// <summary>Shut: there is no record yet.</summary>
    NotMeasured,

    /// <summary>Open: within the limit.</summary>
    Within,

    /// <summary>Shut: over the limit, and nobody has decided.</summary>
    Over,

    /// <summary>Shut: too close to call, or no limit to hold it against, and nobody has decided.</summary>
    Undecided,

    /// <summary>Open: somebody decided to go on.</summary>
    GoneOn,

    /// <summary>Shut: somebody decided to stop.</summary>
    Stopped,
}

/// <summary>The words for reasons of gates in data.</summary>
public static class GateReasonCodes
{
    /// <summary><c>not-measured</c>, <c>within</c>, <c>over</c>, <c>undecided</c>, <c>gone-on</c> or <c>stopped</c>.</summary>
    public static string Of(GateReason reason) => reason switch
    {
        GateReason.NotMeasured => "not-measured",
        GateReason.Within => "within",
        GateReason.Over => "over",
        GateReason.GoneOn => "gone-on",
        GateReason.Stopped => "stopped",
        _ => "undecided",
    };
}

/// <summary>How a gate stands.</summary>
/// <param name="Reason">Why it is open or shut.</param>
/// <param name="Result">The verdict behind it.</param>
/// <param name="Decision">The decision that holds for the record that counts; null where there is none.</param>
public sealed record GateStanding(GateReason Reason, StandingVerdict Result, BookEntry? Decision)
{
    /// <summary>Whether what comes after may be done.</summary>
    public bool IsOpen => Reason is GateReason.Within or GateReason.GoneOn;

    /// <summary>Whether somebody must decide: measured, not within, and nobody has.</summary>
    public bool WaitsForDecision => Reason is GateReason.Over or GateReason.Undecided;

    /// <summary>The gate of a point, with the newest decision about its step.</summary>
    public static GateStanding Of(StandingVerdict result, BookEntry? newestDecision)
    {
        // A decision is about what was known then: another record that counts asks anew.
        var decision = newestDecision?.Deed is GateDecided decided && decided.Record == result.Record?.Id ? newestDecision : null;
        var reason = (result.Verdict, decision?.Deed) switch
        {
            (_, GateDecided { GoOn: false }) => GateReason.Stopped,
            (Metrology.Decision.Verdict.Within, _) => GateReason.Within,
            (_, GateDecided) => GateReason.GoneOn,
            (Metrology.Decision.Verdict.Over, _) => GateReason.Over,
            _ => result.Record is null ? GateReason.NotMeasured : GateReason.Undecided,
        };
        return new(reason, result, decision);
    }
}
