using Handspun.Jobs.Lengths;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Plans;
using Handspun.Jobs.Records;
using Handspun.Metrology.Decision;

namespace Handspun.Jobs.Standing;

/// <summary>A gate in words.</summary>
public static class GateSentence
{
    /// <summary>What the result behind a gate says, with its limit and whether somebody has confirmed that.</summary>
    public static string Result(GateStanding gate, LengthUnit unit)
    {
        if (gate.Result.Record is not { } record)
        {
            return "Not measured.";
        }

        var value = RecordSentence.Value(record, unit) ?? "No value";
        if (gate.Result.Limit is not { } limit)
        {
            return $"{value}. There is no limit to hold it against: set one.";
        }

        var doubt = limit.Confirmed ? "" : " " + RecordWarning.LimitUnconfirmed.Sentence;
        var says = gate.Result.Verdict switch
        {
            Verdict.Within => "within the limit",
            Verdict.Over => "over the limit",
            _ => "too close to call against the limit",
        };
        return $"{value}: {says} ({LimitSentence.Bounds(limit, unit)}).{doubt}";
    }

    /// <summary>What to tell the customer; null where the gate gives no cause.</summary>
    public static string? ToCustomer(PlanStep step, GateStanding gate) => gate.Result switch
    {
        { Verdict: Verdict.Over } => step.IfOver ?? GateWords.Over,
        { Record: not null, Verdict: not Verdict.Within } => step.IfUndecided ?? GateWords.Undecided,
        _ => null,
    };

    /// <summary>Why what comes after a shut gate waits, and what to do.</summary>
    public static string HoldsBack(string title, GateStanding gate) => gate.Reason switch
    {
        GateReason.NotMeasured => $"Held back until '{title}' is measured.",
        GateReason.Stopped => $"Stopped at '{title}' by {gate.Decision?.By}: what comes after waits until somebody decides to go on.",
        GateReason.Over => $"Held back: '{title}' is over its limit. Somebody decides first whether to go on.",
        _ => $"Held back: '{title}' is too close to call. Measure it again, or somebody decides whether to go on.",
    };
}
